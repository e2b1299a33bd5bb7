package skidway.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import org.junit.jupiter.api.Test;
import skidway.site.Spot;
import skidway.timber.Bundle;

class PlanTest {
  /** A plan edited by hand may list its steps in any order; sheets and audit see one. */
  @Test
  void stepsStandByTheirNumbersHoweverTheyWereWritten() {
    Bundle first = aBundle("B1").load("L1", 1).piece("W1", 1, 1, 3).build();
    Bundle second = aBundle("B2").load("L1", 2).piece("W1", 2, 1, 3).build();
    Task task = task(aSite().build(), first, second);
    Spot spot = spot("Y1", "yard", 10, 8, 4.5, 0.9);
    Plan plan =
        aPlan()
            .stack(spot, "B1", "B2")
            .steps(place(task, 2, second, spot, 2), place(task, 1, first, spot, 1))
            .build(task);
    assertThat(plan.steps()).extracting(Step::bundleId).containsExactly("B1", "B2");
  }
}
