package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.plan.Margin;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Yard;

final class CleanPlanTest {
  private final Task task =
      task(
          aSite()
              .lane("L", 1.2, new Point(5, 11.3), new Point(30, 11.3))
              .floorOpening("stair", Outline.box(12, 22.5, 13, 23))
              .keepClear("tree", Outline.box(2, 20, 3, 21), 1, false)
              .machine(Machines.onLane("L2", Machines.slings(60, 600)))
              .excavation("trench", Outline.box(2, 22, 3, 24), 0, 1)
              .overheadLine(
                  new OverheadLine(
                      "L", new Point(-9, 0), new Point(-9, 28), 7200, OptionalDouble.empty()))
              .yards(
                  new Yard(
                      "yard",
                      Outline.box(5, 6, 30, 12),
                      70,
                      "",
                      OptionalDouble.of(0.02),
                      OptionalDouble.of(5000)))
              .deckTotal(2000)
              .joists(
                  new Joists(
                      90,
                      0.4064,
                      new Point(10, 16),
                      List.of(new Point(15, 16), new Point(15, 20), new Point(15, 24)),
                      new JoistDesign.LiveLoad(1.9)))
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
            Rule.DECK_EDGE,
            Rule.EXCAVATION_EDGE,
            Rule.OVERHEAD_LINE,
            Rule.YARD_SLOPE,
            Rule.STACK_SLENDER,
            Rule.JOIST_BENDING,
            Rule.JOIST_SHEAR,
            Rule.ZONE_TOTAL,
            Rule.GROUND_PRESSURE,
            Rule.GROUND_CLEARANCE,
            Rule.BEARER_SPACING,
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
