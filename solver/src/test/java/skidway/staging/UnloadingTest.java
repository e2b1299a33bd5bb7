package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import org.junit.jupiter.api.Test;
import skidway.plan.StepKind;
import skidway.timber.Bundle;

class UnloadingTest {
  private final Bundle shortOne =
      aBundle("short").load("L1", 1).size(2, 0.6, 0.3).piece("W1", 1, 1, 2).build();
  private final Bundle longOne =
      aBundle("long").load("L1", 2).size(4, 0.6, 0.3).piece("W1", 2, 1, 4).build();

  @Test
  void aBundleWaitsUntilWhatBelongsUnderItIsOff() {
    Board board =
        Boards.board(
            task(aSite().build(), shortOne, longOne),
            spot("A", "yard", 10, 8, 5, 1),
            spot("B", "yard", 18, 8, 5, 1));
    Occupancy occupancy = Boards.ground(board).empty();
    occupancy.put(0, 0);
    occupancy.put(1, 0);
    assertThat(Unloading.of(occupancy).lifts())
        .extracting(Unloading.Lift::kind, Unloading.Lift::bundle, Unloading.Lift::to)
        .containsExactly(
            tuple(StepKind.SET_DOWN, 0, 1),
            tuple(StepKind.PLACE, 1, 0),
            tuple(StepKind.LIFT_ON, 0, 0));
  }

  @Test
  void withoutAPlaceToWaitTheStackCannotBeBuilt() {
    Board board =
        Boards.board(task(aSite().build(), shortOne, longOne), spot("A", "yard", 10, 8, 5, 1));
    Occupancy occupancy = Boards.ground(board).empty();
    occupancy.put(0, 0);
    occupancy.put(1, 0);
    assertThat(Unloading.of(occupancy).stranded()).isZero();
  }
}
