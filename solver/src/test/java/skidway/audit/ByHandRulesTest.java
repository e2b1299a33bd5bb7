package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.liftOn;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.PlanBuilder.setDown;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Effort;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Footprint;
import skidway.site.Machine;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.TruckStand;
import skidway.site.Yard;
import skidway.testkit.BundleBuilder;
import skidway.testkit.PlanBuilder;
import skidway.testkit.SiteBuilder;
import skidway.timber.Bundle;

/** What the audit says of plans without a machine. */
final class ByHandRulesTest {
  private final Spot y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private final Spot y2 = spot("Y2", "yard", 16, 8, 4.5, 0.9);
  private final Bundle b1 = first().build();
  private final Bundle b2 = aBundle("B2").load("L1", 2).piece("W1", 2, 1, 4).build();

  private static BundleBuilder first() {
    return aBundle("B1").load("L1", 1).piece("W1", 1, 1, 4);
  }

  private static SiteBuilder handSite() {
    return aSite().machine(Machine.NONE);
  }

  private static List<Rule> broken(Task task, PlanBuilder plan) {
    return Audited.report(task, plan).findings().stream().map(Finding::rule).toList();
  }

  @Test
  void aPlanByHandIsCleanAndSaysWhatDoesNotApply() {
    Task task = task(handSite().build(), b1, b2);
    AuditReport report = Audited.report(task, aPlan().stack(y1, "B1", "B2"));
    assertThat(report.findings()).isEmpty();
    assertThat(report.margins())
        .extracting(margin -> margin.rule())
        .doesNotContain(Rule.MACHINE_REACH, Rule.MACHINE_CAPACITY, Rule.TRAVEL_WIDTH);
    assertThat(report.remarks())
        .anyMatch(r -> r.startsWith("No machine unloads: its reach, load chart"))
        .anyMatch(r -> r.startsWith("Not checked: lifting timbers off the truck's bed"))
        .noneMatch(r -> r.contains("needs grip"));
  }

  @Test
  void aPileTooHighIsFound() {
    Task task = task(handSite().build(), first().size(4, 0.9, 1.8).build());
    assertThat(broken(task, aPlan().stack(y1, "B1"))).containsOnly(Rule.STACK_HEIGHT);
  }

  @Test
  void aShutPathFromTheTruckIsFound() {
    Spot across = spot("Y3", "yard", 8.2, 10.6, 5, 0.9);
    SiteBuilder narrow =
        handSite()
            .keepClear("left", Outline.box(0, 9.6, 5.6, 11.5), 0, false)
            .keepClear("right", Outline.box(10.8, 9.6, 40, 11.5), 0, false);
    Task task = task(narrow.build(), first().size(4, 0.6, 0.4).build());
    assertThat(broken(task, aPlan().stack(across, "B1"))).contains(Rule.PATHS_OPEN);
  }

  /** A second truck between stacks and trees: nobody carries a timber away from it. */
  @Test
  void aTruckThatIsShutInIsFound() {
    Site plain =
        handSite()
            .yards(new Yard("yard", Outline.box(22, 0, 40, 14), 70))
            .keepClear("hedge", Outline.box(26, 6.2, 40, 6.4), 0, false)
            .build();
    Site site =
        new Site(
            plain.name(),
            plain.boundary(),
            plain.northDeg(),
            plain.courseM(),
            plain.walls(),
            plain.decks(),
            plain.yards(),
            plain.lanes(),
            plain.keepClears(),
            List.of(
                new TruckStand("truck", new Footprint(new Point(8, 2), 0, 12, 2.6)),
                new TruckStand("gate", new Footprint(new Point(34, 3), 0, 10, 2.6))),
            plain.machine(),
            plain.spots());
    Spot across = spot("Y9", "yard", 25.5, 3.1, 0.9, 6.0);
    Task task = task(site, first().size(0.9, 4, 0.4).build());
    PlanBuilder plan = aPlan().stack(across, "B1");
    assertThat(Audited.sentences(Rule.PATHS_OPEN, Audited.report(task, plan)))
        .containsExactly("No way 0.71 m wide leads to truck stand gate: stacks on Y9 shut it.");
  }

  @Test
  void nothingIsLiftedAsAWhole() {
    Task task = task(handSite().build(), b1, b2);
    PlanBuilder plan =
        aPlan()
            .stack(y1, "B2", "B1")
            .waiting(y2)
            .steps(
                setDown(task, 1, b1, y2),
                place(task, 2, b2, y1, 1),
                liftOn(task, 3, b1, y2, y1, 2));
    assertThat(Audited.sentences(Rule.STEPS_BUILD, Audited.report(task, plan)))
        .containsExactly(
            "Step 1 lifts B1 as a whole, but no machine is there: its timbers go from the truck to"
                + " their stack.",
            "Step 3 lifts B1 as a whole, but no machine is there: its timbers go from the truck to"
                + " their stack.");
  }

  /**
   * B1 on Y1, by a step that somebody wrote.
   *
   * @param lessKg how much less than it weighs the step tells
   */
  private PlanBuilder inOneStep(
      Task task, String stand, double reachM, double lessKg, double capacityKg) {
    Step told = place(task, 1, b1, y1, 1);
    return aPlan()
        .stack(y1, "B1")
        .steps(
            new Step(
                1,
                told.kind(),
                "B1",
                "L1",
                "Y1",
                1,
                stand,
                reachM,
                told.massKg() - lessKg,
                capacityKg,
                told.bearers()));
  }

  @Test
  void aStepThatNamesAStandIsFound() {
    Task task = task(handSite().build(), b1);
    PlanBuilder plan = inOneStep(task, "M", 9, 0, 900);
    assertThat(Audited.sentences(Rule.KNOWN, Audited.report(task, plan)))
        .containsExactly("Step 1 lifts from stand M, which the site does not have.");
  }

  @Test
  void aMachinesStepWithoutAStandIsFound() {
    Task task = task(aSite().build(), b1);
    PlanBuilder plan = inOneStep(task, "", 0, 0, 0);
    assertThat(Audited.sentences(Rule.KNOWN, Audited.report(task, plan)))
        .containsExactly("Step 1 lifts from no stand of the machine.");
  }

  @Test
  void hoursToldWrongAreFound() {
    Task task = task(handSite().build(), b1);
    PlanBuilder plan = aPlan().stack(y1, "B1");
    Effort found = Audit.of(task, plan.build(task)).effort();
    assertThat(found.offTruckS()).isGreaterThan(60 + 20);
    Effort wrong =
        new Effort(found.carryS(), found.pickS(), found.rehandleS(), 0, 0)
            .withOffTruck(1.2 * found.offTruckS());
    assertThat(Audited.sentences(Rule.HAND_UNLOAD, task, plan.effort(wrong)))
        .singleElement()
        .asString()
        .contains(" of unloading by hand, the audit finds ");
  }

  @Test
  void aWeightToldWrongIsFound() {
    Task task = task(handSite().build(), b1);
    PlanBuilder plan = inOneStep(task, "", 0, 5, 0);
    assertThat(Audited.sentences(Rule.STEPS_BUILD, Audited.report(task, plan)))
        .singleElement()
        .asString()
        .startsWith("Step 1 (B1 to Y1) is told to weigh 43 kg, the audit finds 48 kg");
  }
}
