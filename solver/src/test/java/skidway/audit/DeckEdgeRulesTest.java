package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.site.Yard;

/** A stack with its bearer is 0.489 m high; the deck's south edge is at y = 15.9. */
final class DeckEdgeRulesTest {
  private static final Spot NEAR_SOUTH = spot("D1", "deck", 15, 18.5, 4, 0.9);

  private static Wall wall(String id, Point from, Point to, double builtM) {
    return new Wall(id, from, to, 0.2, Starter.FULL, List.of(), builtM);
  }

  private static Wall south(double fromX, double toX, double builtM) {
    return wall("W1", new Point(fromX, 16), new Point(toX, 16), builtM);
  }

  private static List<String> broken(Spot spot, Wall... walls) {
    Task task =
        task(
            aSite().walls(walls).build(), aBundle("B1").piece("W1", 1, 1, 1).weighing(100).build());
    return Audited.sentences(Rule.DECK_EDGE, task, aPlan().stack(spot, "B1"));
  }

  @Test
  void aBareEdgeHasItsSetback() {
    assertThat(broken(spot("D1", "deck", 15, 19.398, 4, 0.9), south(10, 20, 0))).isEmpty();
    assertThat(broken(NEAR_SOUTH, south(10, 20, 0)))
        .containsExactly("Stack D1 stands 2.15 m from the edge of deck, limit 3.05 m.");
  }

  @Test
  void aWallHigherThanTheStackLetsItStandNear() {
    assertThat(broken(NEAR_SOUTH, south(10, 20, 0.491))).isEmpty();
    assertThat(broken(NEAR_SOUTH, south(10, 20, 0.489))).hasSize(1);
    assertThat(broken(NEAR_SOUTH, south(10, 20, 0.45)))
        .containsExactly(
            "Stack D1 is 0.49 m high near the edge of deck, where wall W1 is no higher, limit 0.45 m.");
    assertThat(broken(spot("D1", "deck", 15, 19.398, 4, 0.9), south(10, 20, 0.1))).isEmpty();
  }

  @Test
  void aWallHidesOnlyTheStretchItCovers() {
    // The stack's end is at x = 17; what is bare from x on is 2.15 m away there;
    // the wall covers its thickness of 0.2 m beyond its end.
    assertThat(broken(NEAR_SOUTH, south(10, 19.0, 1))).isEmpty();
    assertThat(broken(NEAR_SOUTH, south(10, 18.8, 1)))
        .containsExactly("Stack D1 stands 2.94 m from the edge of deck, limit 3.05 m.");
  }

  @Test
  void ofTwoWallsTheHigherCountsAndOfTwoStretchesTheLower() {
    assertThat(broken(NEAR_SOUTH, south(10, 20, 0.3), south(10, 20, 1))).isEmpty();
    assertThat(broken(NEAR_SOUTH, south(10, 15, 0.3), south(15, 20, 1))).hasSize(1);
    assertThat(broken(NEAR_SOUTH, south(10, 15, 0.6), south(15, 20, 1))).isEmpty();
  }

  @Test
  void onlyAWallAlongTheEdgeCounts() {
    // Out of line by 4.9 and by 5.2 degrees.
    assertThat(broken(NEAR_SOUTH, wall("W1", new Point(10, 15.5), new Point(20, 16.36), 1)))
        .isEmpty();
    assertThat(broken(NEAR_SOUTH, wall("W1", new Point(10, 15.5), new Point(20, 16.41), 1)))
        .hasSize(1);
    assertThat(broken(NEAR_SOUTH, wall("W1", new Point(10, 16.5), new Point(20, 16.5), 1)))
        .isEmpty();
    assertThat(broken(NEAR_SOUTH, wall("W1", new Point(10, 16.6), new Point(20, 16.6), 1)))
        .hasSize(1);
  }

  @Test
  void aRackIsAsHighAsItsLongestPiece() {
    Spot rack = rack("R1", "deck", 15, 18.5, 1, 0.5);
    assertThat(broken(rack, south(10, 20, 1.091))).isEmpty();
    assertThat(broken(rack, south(10, 20, 1.05))).hasSize(1);
  }

  @Test
  void aYardHasNoEdgeToFallFrom() {
    Task task =
        task(
            aSite().yards(new Yard("yard", Outline.box(5, 6, 30, 12), 70)).build(),
            aBundle("B1").build());
    Spot atEdge = spot("Y1", "yard", 7.25, 6.45, 4.5, 0.9);
    assertThat(Audited.sentences(Rule.DECK_EDGE, task, aPlan().stack(atEdge, "B1"))).isEmpty();
  }
}
