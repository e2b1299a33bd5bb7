package skidway.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import skidway.site.Footprint;
import skidway.site.Outline;
import skidway.site.Point;

class WalkingPropertiesTest {
  private static final Walker WALKER = new Walker(0.45, 4.4);
  private static final double TOLERANCE_M = 0.001;

  @Property(seed = "20310505", tries = 80)
  void distancesAreAMetric(
      @ForAll("turnedBoxes") List<Outline> obstacles,
      @ForAll("points") Point a,
      @ForAll("points") Point b,
      @ForAll("points") Point c) {
    WalkingMap map =
        WalkingMap.of(
            Places.site(Outline.box(0, 0, 20, 20), List.of(), List.of(), obstacles),
            Set.of(),
            WALKER);
    double ab = map.metres(a, b);
    assertThat(map.metres(b, a)).isEqualTo(ab, within(1e-9));
    assertThat(ab).isGreaterThanOrEqualTo(a.distanceTo(b) - TOLERANCE_M);
    assertThat(map.metres(a, c)).isLessThanOrEqualTo(ab + map.metres(b, c) + 1e-9);
  }

  @Property(seed = "20310505", tries = 80)
  void agreesWithAGridOfSmallSteps(
      @ForAll("cells") boolean[][] closed,
      @ForAll("corners") Point from,
      @ForAll("corners") Point to) {
    CellWalk grid = new CellWalk(closed);
    double gridM = grid.metres(from, to);
    double exactM =
        WalkingMap.of(
                Places.site(
                    Outline.box(0, 0, closed.length, closed[0].length),
                    List.of(),
                    List.of(),
                    grid.obstacles()),
                Set.of(),
                WALKER)
            .metres(from, to);
    if (Double.isInfinite(gridM)) {
      assertThat(exactM).isInfinite();
    } else {
      assertThat(exactM).isLessThanOrEqualTo(gridM + TOLERANCE_M);
      assertThat(gridM).isLessThanOrEqualTo(exactM * CellWalk.WORST_RATIO + TOLERANCE_M);
    }
  }

  @Provide
  Arbitrary<List<Outline>> turnedBoxes() {
    Arbitrary<Double> size = Arbitraries.doubles().between(0.3, 6);
    return Combinators.combine(points(), Arbitraries.doubles().between(0, 180), size, size)
        .as(
            (centre, heading, length, width) ->
                new Footprint(centre, heading, length, width).outline())
        .list()
        .ofMaxSize(7);
  }

  @Provide
  Arbitrary<Point> points() {
    Arbitrary<Double> axis = Arbitraries.doubles().between(0, 20);
    return Combinators.combine(axis, axis).as(Point::new);
  }

  @Provide
  Arbitrary<boolean[][]> cells() {
    return Arbitraries.integers()
        .between(0, 9)
        .map(n -> n < 3)
        .array(boolean[].class)
        .ofSize(12)
        .array(boolean[][].class)
        .ofSize(14);
  }

  @Provide
  Arbitrary<Point> corners() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 14), Arbitraries.integers().between(0, 12))
        .as(Point::new);
  }
}
