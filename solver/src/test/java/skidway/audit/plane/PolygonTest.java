package skidway.audit.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.site.Footprint;
import skidway.site.Point;

final class PolygonTest {
  private static final double TOLERANCE_M = 1e-9;

  /** A 10 by 10 m square without its upper right quarter. */
  private static final String ELL = "0 0, 10 0, 10 5, 5 5, 5 10, 0 10";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2 2 | true
          7 2 | true
          2 7 | true
          7 7 | false
          -1 5 | false
          # level with a corner
          -1 0 | false
          2 5 | true
          11 5 | false
          """)
  void contains(String point, boolean expected) {
    assertThat(Shape.polygon(ELL).contains(Shape.points(point).get(0))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # inside, touching from inside
          2.5 2.5 0 2 2   | 1.5
          1 1 0 2 2       | 0
          # sticking out at a side
          9.3 2.5 0 2 2   | -0.3
          # over the inner corner
          4.2 4.2 0 2 2   | -0.2
          # all outside: beside it, in the cut-out quarter, touching from outside
          12 2.5 0 2 2    | -3
          7.5 7.5 0 2 2   | -3.5
          11 2.5 0 2 2    | -2
          """)
  void inset(String rectangle, double expectedM) {
    assertThat(Shape.polygon(ELL).inset(Shape.rectangle(rectangle)))
        .isCloseTo(expectedM, within(TOLERANCE_M));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          12 2.5 0 2 2    | 1
          11 2.5 0 2 2    | 0
          13 9 0 2 2      | 3.60555127546
          7.5 7.5 0 2 2   | 1.5
          10.8 2.5 0 2 2  | -0.2
          # wholly inside
          2.5 2.5 0 2 2   | -3.5
          # covering it all
          5 5 0 30 30     | -15
          """)
  void separation(String rectangle, double expectedM) {
    assertThat(Shape.polygon(ELL).separation(Shape.rectangle(rectangle)))
        .isCloseTo(expectedM, within(TOLERANCE_M));
  }

  @Property(seed = "20310505", tries = 300)
  void aRectangleAsAPolygonIsAsFarAwayAsTheRectangle(
      @ForAll @DoubleRange(min = -6, max = 6) double x,
      @ForAll @DoubleRange(min = -6, max = 6) double y,
      @ForAll @DoubleRange(min = 0, max = 180) double heading) {
    Footprint fixed = new Footprint(new Point(0, 0), 30, 4, 2);
    Rectangle moved = Rectangle.of(new Footprint(new Point(x, y), heading, 3, 1));
    double expectedM = Rectangle.of(fixed).separation(moved);
    double foundM = Polygon.of(fixed.outline()).separation(moved);
    if (expectedM > 0) {
      assertThat(foundM).isCloseTo(expectedM, within(TOLERANCE_M));
    } else {
      assertThat(foundM).isNotPositive();
    }
  }

  @Property(seed = "20310505", tries = 300)
  void aRectangleIsInsideExactlyWhenNoPointOfItsRimIsOutside(
      @ForAll @DoubleRange(min = 0, max = 10) double x,
      @ForAll @DoubleRange(min = 0, max = 10) double y,
      @ForAll @DoubleRange(min = 0, max = 180) double heading) {
    Rectangle moved = Rectangle.of(new Footprint(new Point(x, y), heading, 3, 1));
    Polygon ell = Shape.polygon(ELL);
    double insetM = ell.inset(moved);
    double outM =
        moved.sides().stream()
            .flatMap(
                s ->
                    IntStream.rangeClosed(0, 100)
                        .mapToObj(i -> s.a().plus(s.b().minus(s.a()).times(i / 100.0))))
            .mapToDouble(ell::distanceTo)
            .max()
            .orElseThrow();
    if (insetM >= 0) {
      assertThat(outM).isLessThan(TOLERANCE_M);
    } else if (insetM < -0.05) {
      assertThat(outM).isPositive();
    }
  }
}
