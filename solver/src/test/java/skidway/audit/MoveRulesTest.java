package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.liftOn;
import static skidway.testkit.PlanBuilder.move;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.PlanBuilder.setAside;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import skidway.plan.Effort;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.testkit.PlanBuilder;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/** B1 and, on it, B2 lie on Y1 when the plan begins; B3 comes. */
final class MoveRulesTest {
  private static final Bundle B1 = aBundle("B1").load("L1", 1).weighing(300).build();
  private static final Bundle B2 = aBundle("B2").load("L1", 2).weighing(300).build();
  private static final Bundle B3 = aBundle("B3").load("L2", 1).weighing(300).build();
  private static final Spot Y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private static final Spot Y2 = spot("Y2", "yard", 15, 8, 4.5, 0.9);
  private static final Spot WAIT = spot("T1", "yard", 23.5, 8, 4.5, 0.9);

  private static final Task TASK = lying(Set.of());

  private static Task lying(Set<String> fixed) {
    return begun(task(aSite().build(), B1, B2, B3), fixed);
  }

  private static Task begun(Task task, Set<String> fixed) {
    BearerRow row = place(task, 1, B1, Y1, 1).bearers();
    Start start =
        new Start(
            List.of(new Stack(Y1, List.of("B1", "B2"))),
            Map.of("B1", row),
            List.of(Y1),
            fixed,
            Set.of());
    return task.startingFrom(start);
  }

  private static List<String> all(Task task, PlanBuilder plan) {
    return Audited.report(task, plan).findings().stream().map(Finding::sentence).toList();
  }

  @Test
  void whatStaysNeedsNoStep() {
    PlanBuilder plan = aPlan().stack(Y1, "B1", "B2").stack(Y2, "B3");
    assertThat(all(TASK, plan.steps(place(TASK, 1, B3, Y2, 1)))).isEmpty();
    assertThat(all(TASK, aPlan().stack(Y1, "B1", "B2", "B3").steps(place(TASK, 1, B3, Y1, 3))))
        .isEmpty();
  }

  @Test
  void theTopIsMovedAndSetAsideAndLiftedOn() {
    PlanBuilder apart =
        aPlan()
            .stack(Y1, "B1")
            .stack(Y2, "B2", "B3")
            .steps(move(TASK, 1, B2, Y1, Y2, 1), place(TASK, 2, B3, Y2, 2));
    assertThat(all(TASK, apart)).isEmpty();
    PlanBuilder turned =
        aPlan()
            .stack(Y2, "B1", "B2", "B3")
            .waiting(WAIT)
            .steps(
                setAside(TASK, 1, B2, Y1, WAIT),
                move(TASK, 2, B1, Y1, Y2, 1),
                liftOn(TASK, 3, B2, WAIT, Y2, 2),
                place(TASK, 4, B3, Y2, 3));
    assertThat(all(TASK, turned)).isEmpty();
  }

  @Test
  void aBundleUnderAnotherIsNotMoved() {
    PlanBuilder plan =
        aPlan()
            .stack(Y1, "B2")
            .stack(Y2, "B1", "B3")
            .steps(move(TASK, 1, B1, Y1, Y2, 1), place(TASK, 2, B3, Y2, 2));
    assertThat(all(TASK, plan)).containsExactly("Step 1 lifts B1 from under B2.");
  }

  @Test
  void whatMustStayIsNotLiftedAndBearsNothingNew() {
    PlanBuilder away =
        aPlan()
            .stack(Y1, "B1")
            .stack(Y2, "B2", "B3")
            .steps(move(TASK, 1, B2, Y1, Y2, 1), place(TASK, 2, B3, Y2, 2));
    assertThat(all(lying(Set.of("B1")), away)).isEmpty();
    assertThat(all(lying(Set.of("B2")), away))
        .containsExactly(
            "Step 1 lifts B2, which must stay where it lies.",
            "Step 2 puts B3 on B2 at Y2, which is open or locked.");
    PlanBuilder on = aPlan().stack(Y1, "B1", "B2", "B3").steps(place(TASK, 1, B3, Y1, 3));
    assertThat(all(lying(Set.of("B1")), on))
        .containsExactly("Step 1 puts B3 on B1 at Y1, which is open or locked.");
  }

  @Test
  void aSpotMustBeReadyForWhatComes() {
    PlanBuilder plan =
        aPlan()
            .stack(Y1, "B3")
            .stack(Y2, "B2", "B1")
            .steps(
                move(TASK, 1, B2, Y1, Y2, 1),
                place(TASK, 2, B3, Y1, 1),
                move(TASK, 3, B1, Y1, Y2, 2));
    assertThat(all(TASK, plan))
        .containsExactly(
            "Step 2 puts B3 on tier 1 of Y1, but it gets to tier 2.",
            "Step 3 lifts B1 from under B3.");
  }

  @Test
  void whatIsStillToBeMovedNeedsItsGap() {
    Spot near = spot("Y3", "yard", 12, 8, 4.5, 0.9);
    PlanBuilder tooSoon =
        aPlan()
            .stack(near, "B2", "B1")
            .stack(spot("Y4", "yard", 23.5, 8, 4.5, 0.9), "B3")
            .steps(
                move(TASK, 1, B2, Y1, near, 1),
                move(TASK, 2, B1, Y1, near, 2),
                place(TASK, 3, B3, spot("Y4", "yard", 23.5, 8, 4.5, 0.9), 1));
    assertThat(all(TASK, tooSoon))
        .contains("Stack Y3 and stack Y1 overlap by 0.90 m. That is so at step 1.");
  }

  @Test
  void whatIsPlannedElsewhereMustGetThere() {
    PlanBuilder plan =
        aPlan().stack(Y1, "B1").stack(Y2, "B3", "B2").steps(place(TASK, 1, B3, Y2, 1));
    assertThat(all(TASK, plan)).containsExactly("No step brings B2 to Y2, where it is planned.");
  }

  @Test
  void whatIsLeftOutHasNoSpot() {
    PlanBuilder plan =
        aPlan().stack(Y1, "B1").stack(Y2, "B3").unplaced("B2").steps(place(TASK, 1, B3, Y2, 1));
    assertThat(Audited.report(TASK, plan).findings())
        .extracting(Finding::rule)
        .containsExactly(Rule.PLACED);
  }

  @Test
  void whatComesOffATruckIsNotMoved() {
    PlanBuilder plan =
        aPlan()
            .stack(Y1, "B1", "B2")
            .stack(Y2, "B3")
            .steps(place(TASK, 1, B3, WAIT, 1), move(TASK, 2, B3, WAIT, Y2, 1));
    assertThat(all(TASK, plan))
        .contains("Step 2 moves B3, which did not lie on site when the plan began.");
  }

  @Test
  void aCodeThatIsPaintedOnTheGroundStaysThere() {
    Spot elsewhere = spot("Y1", "yard", 15, 8, 4.5, 0.9);
    PlanBuilder plan =
        aPlan().stack(elsewhere, "B1", "B2", "B3").steps(place(TASK, 1, B3, elsewhere, 3));
    assertThat(all(TASK, plan)).contains("The code Y1 stands for two different places.");
  }

  /** Two stands 6 m apart: B2 is picked up from one, driven 6 m, and put down from the other. */
  @Test
  void aMoveIsReachedFromBothStandsAndTakesItsTime() {
    Machine machine =
        new Machine(
            "two stands",
            List.of(
                new MachineStand("M", new Point(11, 5)), new MachineStand("N", new Point(17, 5))),
            List.of(new ChartRow(4, 3000)));
    Task task = begun(task(aSite().machine(machine).build(), B1, B2, B3), Set.of());
    Step down = move(task, 1, B2, Y1, Y2, 1);
    PlanBuilder plan =
        aPlan()
            .stack(Y1, "B1", "B3")
            .stack(Y2, "B2")
            .steps(picked(down, "M"), place(task, 2, B3, Y1, 2));
    assertThat(all(task, plan)).isEmpty();
    // (180 s + 2 * 6 m / 1.5 m/s) * 2 people, and 120 s for the tags.
    assertThat(Audited.report(task, plan).effort().moveS()).isCloseTo(496, within(0.01));
    PlanBuilder unknown =
        aPlan()
            .stack(Y1, "B1", "B3")
            .stack(Y2, "B2")
            .steps(picked(down, "Q"), place(task, 2, B3, Y1, 2));
    assertThat(all(task, unknown))
        .contains("Step 1 lifts from stand Q, which the site does not have.");
    PlanBuilder fromOne =
        aPlan()
            .stack(Y1, "B1", "B3")
            .stack(Y2, "B2")
            .steps(picked(down, ""), place(task, 2, B3, Y1, 2));
    assertThat(Audited.sentences(Rule.MACHINE_REACH, Audited.report(task, fromOne))).hasSize(2);
  }

  private static Step picked(Step s, String standId) {
    double reachM = Math.hypot(2, 3);
    return new Step(
        s.number(),
        s.kind(),
        s.bundleId(),
        s.fromId(),
        s.toId(),
        s.tier(),
        "N",
        reachM,
        s.massKg(),
        3000,
        s.bearers(),
        standId);
  }

  @Test
  void theTimeOfMovingIsComparedToo() {
    PlanBuilder plan =
        aPlan()
            .stack(Y1, "B1")
            .stack(Y2, "B2", "B3")
            .steps(move(TASK, 1, B2, Y1, Y2, 1), place(TASK, 2, B3, Y2, 2));
    Effort found = Audit.of(TASK, plan.build(TASK)).effort();
    // 180 s * 2 people without a drive, and 120 s for the tags.
    assertThat(found.moveS()).isCloseTo(480, within(0.01));
    Effort silent =
        new Effort(found.carryS(), found.pickS(), found.rehandleS(), 0, found.machineS(), 0);
    assertThat(Audit.of(TASK, plan.effort(silent).build(TASK)).findings())
        .extracting(Finding::sentence)
        .containsExactly("The plan says 0.0 h of moving what lay there, the audit finds 0.1 h.");
  }

  @Test
  void aStackThatStandsHasTheBearersItHas() {
    BearerRow two = new BearerRow(2, 3.4, 0.3, 0.6);
    Task task =
        new Task(
            TASK.jobName(),
            TASK.site(),
            TASK.delivery(),
            TASK.settings(),
            TASK.schedule(),
            TASK.figures(),
            new Start(TASK.start().stacks(), Map.of("B1", two), List.of(), Set.of(), Set.of()));
    PlanBuilder plan =
        aPlan().stack(Y1, "B1", "B2").stack(Y2, "B3").steps(place(task, 1, B3, Y2, 1));
    double twoKpa = pressure(task, plan);
    double moreKpa = pressure(TASK, plan);
    assertThat(twoKpa).isGreaterThan(1.5 * moreKpa);
  }

  private static double pressure(Task task, PlanBuilder plan) {
    return Audited.report(task, plan).stackMargins().stream()
        .filter(m -> m.rule() == Rule.GROUND_PRESSURE && m.where().equals("Y1"))
        .findFirst()
        .orElseThrow()
        .value();
  }
}
