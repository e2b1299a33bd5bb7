package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.erection.PullOrder;
import skidway.plan.Presence;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;

class BundleFitTest {
  /** Pieces of 2.2 m on rails of 0.089 m, in a rack beside a wall: higher than a stack may be. */
  @ParameterizedTest
  @ValueSource(doubles = {2.28, 2.29})
  void longPiecesOnEndStayBelowTheWallBesideThem(double wallM) {
    Task task =
        task(
            aSite().build(),
            Settings.defaults().with(Setting.RACK_PIECE_LENGTH, 2.5, "braced racks"),
            aBundle("B1").size(2.2, 0.4, 0.3).weighing(50).piece("W1", 1, 1, 2.2).build());
    PullOrder order = task.pullOrder();
    Board board =
        new Board(
            task,
            List.of(rack("R1", "deck", 15, 20, 2, 1)),
            new double[] {wallM},
            new int[1][0],
            new double[1][1],
            order,
            Presence.of(task),
            HandUnloading.NEVER);
    List<Rule> refusals = new BundleFit(board).refusals(0, 0);
    assertThat(refusals.contains(Rule.DECK_EDGE)).isEqualTo(wallM < 2.289);
  }
}
