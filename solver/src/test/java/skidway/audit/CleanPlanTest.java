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
import skidway.plan.Margin;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Outline;
import skidway.site.Point;

final class CleanPlanTest {
  private final Task task =
      task(
          aSite()
              .lane("L", 1.2, new Point(5, 11.3), new Point(30, 11.3))
              .floorOpening("stair", Outline.box(12, 22.5, 13, 23))
              .keepClear("tree", Outline.box(2, 20, 3, 21), 1, false)
              .build(),
          aBundle("B1").load("L1", 1).piece("W1", 1, 1, 4).piece("W1", 2, 1, 4).build(),
          aBundle("B2").load("L1", 2).piece("W2", 1, 1, 4).build(),
          aBundle("B3").load("L2", 1).piece("W3", 1, 1, 1).build());

  private final AuditReport report =
      Audited.report(
          task,
          aPlan()
              .stack(spot("Y1", "yard", 10, 8, 4.5, 0.9), "B1")
              .stack(spot("D1", "deck", 15, 19.5, 4, 0.9), "B2")
              .stack(rack("R1", "yard", 16, 8, 1, 0.5), "B3"));

  @Test
  void aGoodPlanIsCleanAndLeavesNothingUnchecked() {
    assertThat(report.findings()).isEmpty();
    assertThat(report.clean()).isTrue();
    assertThat(report.remarks()).isEmpty();
  }

  @Test
  void everyMeasuredRuleTellsItsTightestPlace() {
    assertThat(report.margins())
        .extracting(Margin::rule)
        .contains(
            Rule.INSIDE_ZONE,
            Rule.FLOOR_OPENING,
            Rule.WORKING_STRIP,
            Rule.LANES_CLEAR,
            Rule.TRUCK_CLEAR,
            Rule.MACHINE_CLEAR,
            Rule.KEEP_CLEAR,
            Rule.SPOTS_APART,
            Rule.FITS_SPOT,
            Rule.STACK_HEIGHT,
            Rule.ZONE_LOAD,
            Rule.RACK_LENGTH,
            Rule.RACK_ROOM,
            Rule.MACHINE_REACH,
            Rule.MACHINE_CAPACITY)
        .doesNotHaveDuplicates();
    assertThat(report.margins()).allSatisfy(m -> assertThat(m.share()).isNotNegative());
  }

  @Test
  void theTightestPlaceIsTheOneNearestToItsLimit() {
    List<Margin> fits = report.margins().stream().filter(m -> m.rule() == Rule.FITS_SPOT).toList();
    assertThat(fits).containsExactly(new Margin(Rule.FITS_SPOT, "D1", 4, 4, false));
  }
}
