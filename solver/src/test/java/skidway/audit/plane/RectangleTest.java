package skidway.audit.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.site.Footprint;
import skidway.site.Point;

final class RectangleTest {
  private static final double TOLERANCE_M = 1e-9;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # touching at a side, at a corner
          0 0 0 4 2   | 4 0 0 4 2      | 0
          0 0 0 4 2   | 4 2 0 4 2      | 0
          # apart across, apart from corner to corner
          0 0 0 4 2   | 0 5 0 4 2      | 3
          0 0 0 4 2   | 7 6 0 4 2      | 5
          # overlapping: the shortest way out
          0 0 0 4 2   | 3.5 0 0 4 2    | -0.5
          0 0 0 4 2   | 0 1.7 0 4 2    | -0.3
          0 0 0 4 2   | 0 0 0 1 1      | -1.5
          # turned by 45 degrees: a corner points at a side
          0 0 0 4 2   | 0 3 45 2 2     | 0.58578643763
          0 0 0 4 2   | 0 2 45 2 2     | -0.41421356237
          # boxes round both would overlap, the rectangles do not
          0 0 45 10 1 | 4 0 45 10 1    | 1.82842712475
          """)
  void separation(String a, String b, double expectedM) {
    assertThat(Shape.rectangle(a).separation(Shape.rectangle(b)))
        .isCloseTo(expectedM, within(TOLERANCE_M));
    assertThat(Shape.rectangle(b).separation(Shape.rectangle(a)))
        .isCloseTo(expectedM, within(TOLERANCE_M));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0 0 0 4 2   | 3 -5, 3 5      | 1
          0 0 0 4 2   | 2 -5, 2 5      | 0
          0 0 0 4 2   | 0 0, 1 0       | 0
          0 0 0 4 2   | 5 5, 2 1       | 0
          0 0 90 4 2  | 2 -5, 2 5      | 1
          """)
  void distanceOfASegment(String rectangle, String segment, double expectedM) {
    assertThat(Shape.rectangle(rectangle).distanceTo(Shape.segment(segment)))
        .isCloseTo(expectedM, within(TOLERANCE_M));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # through the middle, near a side, along a side, over a corner, ending inside, outside
          0 0 0 4 2   | -9 0, 9 0      | 1
          0 0 0 4 2   | -9 0.8, 9 0.8  | 0.2
          0 0 0 4 2   | -9 1, 9 1      | 0
          0 0 0 4 2   | 1 1, 2 0       | 0.5
          0 0 0 4 2   | -9 0, -1.7 0   | 0.3
          0 0 0 4 2   | -9 3, 9 3      | -2
          """)
  void depthOfASegment(String rectangle, String segment, double expectedM) {
    assertThat(Shape.rectangle(rectangle).depthOf(Shape.segment(segment)))
        .isCloseTo(expectedM, within(TOLERANCE_M));
  }

  @Property(seed = "20310505", tries = 300)
  void twoRectanglesOverlapExactlyWhenOneHoldsAPointOfTheOther(
      @ForAll @DoubleRange(min = -4, max = 4) double x,
      @ForAll @DoubleRange(min = -4, max = 4) double y,
      @ForAll @DoubleRange(min = 0, max = 180) double heading,
      @ForAll @DoubleRange(min = 0.5, max = 5) double length) {
    Rectangle fixed = Shape.rectangle("0 0 20 4 2");
    Footprint footprint = new Footprint(new Point(x, y), heading, length, 1);
    double nearest = nearestSample(fixed, footprint);
    double separation = fixed.separation(Rectangle.of(footprint));
    // Samples lie 5 cm apart at most, so the nearest one is at most 4 cm off the nearest point.
    if (separation > 0) {
      assertThat(nearest).isBetween(separation - TOLERANCE_M, separation + 0.04);
    } else if (separation < -0.05) {
      assertThat(nearest).isZero();
    }
  }

  private static double nearestSample(Rectangle fixed, Footprint footprint) {
    double nearest = Double.POSITIVE_INFINITY;
    int across = 20;
    int along = (int) Math.ceil(footprint.lengthM() / 0.05);
    for (int i = 0; i <= along; i++) {
      for (int j = 0; j <= across; j++) {
        Point u = footprint.along().times(footprint.lengthM() * ((double) i / along - 0.5));
        Point v =
            footprint.along().turnedLeft().times(footprint.widthM() * ((double) j / across - 0.5));
        nearest = Math.min(nearest, fixed.distanceTo(footprint.centre().plus(u).plus(v)));
      }
    }
    return nearest;
  }
}
