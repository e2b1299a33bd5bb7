package skidway.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import skidway.site.Point;

/** Closing a walk, against worked examples that were read where the comments say. */
final class TraverseTest {
  /** Half a thousandth of a foot is lost when a table is rounded to thousandths. */
  private static final double TABLE = 0.0011;

  /**
   * Jerry Mahun, Open Access Surveying Library (jerrymahun.com), Traverse Computations, solution of
   * the self study "Traverse Adjustment", problem 2: latitudes and departures in feet, closure
   * 0.157 ft, precision 1/15,200, adjusted by the compass rule.
   */
  @Test
  void closesThePublishedTraverseByTheCompassRule() {
    Traverse walk =
        new Traverse(
            List.of(
                new Point(-466.732, -436.662),
                new Point(0.000, 523.690),
                new Point(-335.645, -234.660),
                new Point(802.484, 147.517)));
    assertThat(walk.misclosure().y()).isCloseTo(-0.115, within(TABLE));
    assertThat(walk.misclosure().x()).isCloseTo(0.107, within(TABLE));
    assertThat(walk.lengthM()).isCloseTo(2388.31, within(0.01));
    assertThat(walk.misclosure().length()).isCloseTo(0.157, within(TABLE));
    assertThat(walk.ratio()).isCloseTo(15_200, within(50.0));
    List<Point> adjusted =
        List.of(
            new Point(-466.761, -436.631),
            new Point(-0.023, 523.715),
            new Point(-335.663, -234.640),
            new Point(802.447, 147.556));
    for (int i = 0; i < adjusted.size(); i++) {
      assertThat(walk.closed().legs().get(i).distanceTo(adjusted.get(i))).isLessThan(1.5 * TABLE);
    }
  }

  /**
   * The same library, chapter I, loop traverse of figure I-5: from bearings and lengths to closure
   * errors of +0.083 ft in latitude and +0.075 ft in departure.
   */
  @Test
  void readsThePublishedBearings() {
    List<Point> legs =
        List.of(
                "S 68°05'35\" W 472.68",
                "N19°46'00\"W 216.13",
                "N 45°55'20\" E 276.52",
                "S 54°59'15\" E 382.24")
            .stream()
            .map(Lines::step)
            .toList();
    Traverse walk = new Traverse(legs);
    assertThat(legs.get(0).y()).isCloseTo(-176.357, within(TABLE));
    assertThat(legs.get(0).x()).isCloseTo(-438.548, within(TABLE));
    assertThat(legs.get(3).y()).isCloseTo(-219.312, within(TABLE));
    assertThat(legs.get(3).x()).isCloseTo(313.065, within(TABLE));
    assertThat(walk.misclosure().y()).isCloseTo(0.083, within(2 * TABLE));
    assertThat(walk.misclosure().x()).isCloseTo(0.075, within(2 * TABLE));
    assertThat(walk.lengthM()).isCloseTo(1347.57, within(0.001));
  }

  @Test
  void alwaysClosesAndMovesEachLegByItsShare() {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      List<Point> legs =
          random
              .doubles(3 + random.nextInt(9), -20, 20)
              .mapToObj(x -> new Point(x, random.nextDouble() * 40 - 20))
              .toList();
      Traverse walk = new Traverse(legs);
      Point over = walk.misclosure();
      assertThat(walk.closed().misclosure().length()).isLessThan(1e-9);
      for (int k = 0; k < legs.size(); k++) {
        double movedM = walk.closed().legs().get(k).distanceTo(legs.get(k));
        double shareM = over.length() * legs.get(k).length() / walk.lengthM();
        assertThat(movedM).isCloseTo(shareM, within(1e-9));
      }
    }
  }
}
