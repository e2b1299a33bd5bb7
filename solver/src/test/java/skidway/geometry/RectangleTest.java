package skidway.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import skidway.site.Footprint;
import skidway.site.Outline;
import skidway.site.Point;

class RectangleTest {
  private static final Footprint BENCH = new Footprint(new Point(0, 0), 0, 4, 2);

  @Test
  void gapSideToSideAndCornerToCorner() {
    checkGap(new Footprint(new Point(0, 3), 0, 4, 2), 1);
    checkGap(new Footprint(new Point(7, 6), 0, 4, 2), 5);
    checkGap(new Footprint(new Point(0, 2), 0, 4, 2), 0);
    checkGap(new Footprint(new Point(0, 0), 45, 1, 1), 0);
    // A square on its corner: half its diagonal is 1, its lowest point at y = 3.
    checkGap(new Footprint(new Point(0, 4), 45, Math.sqrt(2), Math.sqrt(2)), 2);
  }

  @Test
  void touchingWithinAMillimetreIsNotMeeting() {
    checkMeets(new Footprint(new Point(0, 2), 0, 4, 2), false);
    checkMeets(new Footprint(new Point(0, 1.9991), 0, 4, 2), false);
    checkMeets(new Footprint(new Point(0, 1.9989), 0, 4, 2), true);
    checkMeets(new Footprint(new Point(0, 0), 30, 0.1, 0.1), true);
  }

  @Property(seed = "20310505", tries = 500)
  void agreesWithTheGeometryLibrary(
      @ForAll("footprints") Footprint a, @ForAll("footprints") Footprint b) {
    Polygon shapeA = Shapes.polygon(a);
    Polygon shapeB = Shapes.polygon(b);
    Rectangle first = Rectangle.of(a);
    Rectangle second = Rectangle.of(b);
    assertThat(first.gapM(second)).isCloseTo(shapeA.distance(shapeB), within(1e-9));
    assertThat(second.gapM(first)).isCloseTo(first.gapM(second), within(1e-9));
    assertThat(first.overlapM(second) > 1e-9)
        .isEqualTo(shapeA.intersection(shapeB).getArea() > 1e-9);
  }

  @Property(seed = "20310505", tries = 500)
  void areasAgreeWithTheGeometryLibrary(
      @ForAll("footprints") Footprint a, @ForAll("outlines") Outline outline) {
    Polygon shape = Shapes.polygon(a);
    Polygon polygon = Shapes.polygon(outline);
    Area area = Area.of(outline);
    assertThat(area.gapM(a)).isCloseTo(polygon.distance(shape), within(1e-9));
    assertThat(area.edgeGapM(a)).isCloseTo(polygon.getExteriorRing().distance(shape), within(1e-9));
    if (area.contains(a)) {
      assertThat(area.beyondM(a)).isLessThan(2 * Rectangle.TOUCH_M);
    } else {
      assertThat(polygon.covers(shape)).isFalse();
    }
    if (area.meets(a)) {
      assertThat(area.overlapM(a)).isPositive();
    } else {
      // What is no more than touching is nowhere as deep as two touches.
      assertThat(shape.intersection(polygon).buffer(-2 * Rectangle.TOUCH_M).isEmpty()).isTrue();
    }
  }

  @Provide
  Arbitrary<Footprint> footprints() {
    Arbitrary<Double> at = Arbitraries.doubles().between(-6, 6);
    Arbitrary<Double> size = Arbitraries.doubles().between(0.2, 6);
    return Combinators.combine(at, at, Arbitraries.doubles().between(0, 360), size, size)
        .as((x, y, turn, length, width) -> new Footprint(new Point(x, y), turn, length, width));
  }

  /** Ell shapes, turned. */
  @Provide
  Arbitrary<Outline> outlines() {
    return footprints()
        .map(
            f -> {
              Point a = f.along().times(f.lengthM() / 2);
              Point b = f.along().turnedLeft().times(f.widthM() / 2);
              Point c = f.centre();
              return new Outline(
                  List.of(
                      c.minus(a).minus(b),
                      c.plus(a).minus(b),
                      c.plus(a),
                      c,
                      c.plus(b),
                      c.minus(a).plus(b)));
            });
  }

  private static void checkGap(Footprint other, double expectedM) {
    assertThat(Rectangle.of(BENCH).gapM(Rectangle.of(other))).isCloseTo(expectedM, within(1e-9));
  }

  private static void checkMeets(Footprint other, boolean expected) {
    assertThat(Rectangle.of(BENCH).meets(Rectangle.of(other))).isEqualTo(expected);
  }
}
