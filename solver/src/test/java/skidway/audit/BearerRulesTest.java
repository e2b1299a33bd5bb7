package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.liftOn;
import static skidway.testkit.PlanBuilder.setDown;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Spot;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

final class BearerRulesTest {
  private static final Spot Y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private static final String BEARERS = "The bearers that step 1 lays under B1 at Y1";

  /** What is said of bearers under a bundle of 4 m. */
  private static List<String> broken(Spot spot, int count, double spacingM, double endM) {
    return broken(spot, new BearerRow(count, spacingM, endM, 0.6));
  }

  private static List<String> broken(Spot spot, BearerRow row) {
    Task task = task(aSite().build(), aBundle("B1").weighing(100).build());
    return Audited.sentences(
        Rule.BEARER_SPACING, task, aPlan().stack(spot, "B1").bearers(any -> row));
  }

  @Test
  void bearersLieNoFartherApartThanTheLimit() {
    assertThat(broken(Y1, 4, 1.2192, 0.1712)).isEmpty();
    assertThat(broken(Y1, 3, 1.7, 0.3))
        .containsExactly(
            "The bearers that step 1 lays under B1 at Y1 lie 1.70 m apart, limit 1.22 m.");
  }

  @Test
  void twoOrMoreBearersAndTheEndsFillTheBundlesLength() {
    assertThat(broken(Y1, 4, 1.1, 0.325)).isEmpty();
    assertThat(broken(Y1, 4, 1.1, 0.38))
        .containsExactly(
            BEARERS
                + " (4 of 0.60 m, 1.10 m apart, 0.38 m in from the ends) fit a bundle 4.06 m long"
                + " and at most 0.60 m wide; it is 4.00 m by 0.60 m.");
    assertThat(broken(Y1, 1, 1.1, 2)).containsExactly(BEARERS + " are fewer than two.");
    assertThat(broken(Y1, 0, 0, 0)).containsExactly(BEARERS + " are fewer than two.");
    assertThat(broken(Y1, Integer.MAX_VALUE, 4.0 / Integer.MAX_VALUE, 0)).hasSize(1);
    assertThat(broken(Y1, 4, Double.NaN, 0.3)).hasSize(1);
  }

  /** The bundle is 0.6 m wide; a decimetre on the ground or a deck would not hold it up. */
  @Test
  void bearersReachFromSideToSideOfTheBundle() {
    assertThat(broken(Y1, new BearerRow(4, 1.2, 0.2, 0.55))).isEmpty();
    assertThat(broken(Y1, new BearerRow(4, 1.2, 0.2, 0.54))).hasSize(1);
    assertThat(broken(Y1, new BearerRow(4, 1.2, 0.2, Double.NaN))).hasSize(1);
  }

  @Test
  void aRackNeedsNone() {
    assertThat(broken(rack("Y1", "yard", 10, 8, 1, 0.5), 0, 0, 0)).isEmpty();
  }

  @Test
  void aBundleThatWaitsNeedsThemToo() {
    Task task = task(aSite().build(), aBundle("B1").weighing(100).build());
    Bundle b1 = task.delivery().bundles().get(0);
    Spot waiting = spot("T1", "yard", 17, 8, 4.5, 0.9);
    assertThat(
            Audited.sentences(
                Rule.BEARER_SPACING,
                task,
                aPlan()
                    .stack(Y1, "B1")
                    .waiting(waiting)
                    .steps(setDown(task, 1, b1, waiting), liftOn(task, 2, b1, waiting, Y1, 1))
                    .bearers(row -> BearerRow.NONE)))
        .hasSize(2);
  }
}
