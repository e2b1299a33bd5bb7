package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.liftOn;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.PlanBuilder.setDown;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Spot;
import skidway.testkit.PlanBuilder;
import skidway.timber.Bundle;

final class StepRulesTest {
  private final Bundle b1 = aBundle("B1").load("L1", 1).weighing(500).build();
  private final Bundle b2 = aBundle("B2").load("L1", 2).weighing(500).build();
  private final Bundle b3 = aBundle("B3").load("L2", 1).weighing(500).build();
  private final Spot y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private final Spot y2 = spot("Y2", "yard", 15, 8, 4.5, 0.9);
  private final Spot wait = spot("T1", "yard", 20, 8, 4.5, 0.9);
  private final Task task = task(aSite().build(), b1, b2, b3);

  private List<String> broken(Rule rule, PlanBuilder plan) {
    return Audited.sentences(rule, task, plan);
  }

  private PlanBuilder allOnY1() {
    return aPlan().stack(y1, "B2", "B1").stack(y2, "B3").waiting(wait);
  }

  @Test
  void stepsBuildLetsABundleWaitForWhatBelongsUnderIt() {
    PlanBuilder plan =
        allOnY1()
            .steps(
                setDown(task, 1, b1, wait),
                place(task, 2, b2, y1, 1),
                liftOn(task, 3, b1, wait, y1, 2),
                place(task, 4, b3, y2, 1));
    assertThat(Audited.report(task, plan).findings()).isEmpty();
  }

  @Test
  void stepsBuildKnowsWhereABundleWaits() {
    PlanBuilder plan =
        allOnY1()
            .steps(
                setDown(task, 1, b1, wait),
                setDown(task, 2, b2, wait),
                liftOn(task, 3, b1, wait, y1, 1),
                liftOn(task, 4, b2, wait, y1, 2),
                place(task, 5, b3, y2, 1));
    assertThat(broken(Rule.STEPS_BUILD, plan))
        .containsExactly(
            "The steps build stack Y1 from the bottom as B1, B2; the plan says B2, B1.",
            "Step 2 sets B2 down at T1, where B1 still waits.",
            "Step 3 lifts B1 at T1, but it does not wait there.");
  }

  @Test
  void stepsBuildWantsTheTiersAsTold() {
    PlanBuilder plan =
        aPlan()
            .stack(y1, "B1", "B2")
            .stack(y2, "B3")
            .steps(place(task, 1, b1, y1, 2), place(task, 2, b2, y1, 2), place(task, 3, b3, y2, 1));
    assertThat(broken(Rule.STEPS_BUILD, plan))
        .containsExactly("Step 1 puts B1 on tier 2 of Y1, but it gets to tier 1.");
  }

  @Test
  void stepsBuildWantsNoTierInARack() {
    Spot rack = rack("R1", "yard", 10, 8, 2, 1);
    PlanBuilder plan =
        aPlan()
            .stack(rack, "B2", "B1")
            .stack(y2, "B3")
            .steps(
                place(task, 1, b1, rack, 0),
                place(task, 2, b2, rack, 0),
                place(task, 3, b3, y2, 1));
    assertThat(broken(Rule.STEPS_BUILD, plan)).isEmpty();
  }

  @Test
  void stepsBuildTakesEachBundleOffOnceAndFromItsOwnLoad() {
    PlanBuilder plan =
        aPlan()
            .stack(y1, "B1", "B2")
            .stack(y2, "B3")
            .steps(
                place(task, 1, b1, y1, 1),
                place(task, 2, b1, y1, 2),
                place(task, 3, b2, y1, 3),
                from("L9", place(task, 4, b3, y2, 1)));
    assertThat(broken(Rule.STEPS_BUILD, plan))
        .containsExactly(
            "The steps bring B1 to Y1, the plan does not.",
            "Step 2 takes B1 off a truck where it no longer is.",
            "Step 4 takes B3 from L9, but it comes with load L2.");
  }

  @Test
  void stepsBuildLiftsNothingFromUnderAnother() {
    PlanBuilder plan =
        aPlan()
            .stack(y1, "B2")
            .stack(y2, "B1", "B3")
            .steps(
                place(task, 1, b1, y1, 1),
                place(task, 2, b2, y1, 2),
                liftOn(task, 3, b1, y1, y2, 1),
                place(task, 4, b3, y2, 2));
    assertThat(broken(Rule.STEPS_BUILD, plan))
        .containsExactly(
            "Step 3 lifts B1 at Y1, but it does not wait there.", "Step 3 lifts B1 from under B2.");
  }

  @Test
  void stepsBuildLeavesNothingWaiting() {
    PlanBuilder plan =
        aPlan()
            .stack(y1, "B1", "B2")
            .stack(y2, "B3")
            .waiting(wait)
            .steps(
                place(task, 1, b1, y1, 1), setDown(task, 2, b2, wait), place(task, 4, b3, y2, 1));
    assertThat(broken(Rule.STEPS_BUILD, plan))
        .containsExactly(
            "B2 is left waiting at T1 when all steps are done.",
            "No step brings B2 to Y1, where it is planned.",
            "Step 4 comes where step 3 should.");
  }

  @Test
  void stepsBuildSetsNothingDownInARack() {
    Spot rack = rack("T1", "yard", 22, 8, 4.5, 0.9);
    PlanBuilder plan =
        aPlan()
            .stack(y1, "B2", "B1")
            .stack(y2, "B3")
            .waiting(rack)
            .steps(
                setDown(task, 1, b1, rack),
                place(task, 2, b2, y1, 1),
                liftOn(task, 3, b1, rack, y1, 2),
                place(task, 4, b3, y2, 1));
    assertThat(broken(Rule.STEPS_BUILD, plan))
        .containsExactly("Waiting place T1 is a rack, where no bundle can be set down.");
  }

  @Test
  void stepsBuildSaysWhenAStackIsBuiltUpsideDown() {
    PlanBuilder plan =
        aPlan()
            .stack(y1, "B2", "B1")
            .stack(y2, "B3")
            .steps(place(task, 1, b1, y1, 1), place(task, 2, b2, y1, 2), place(task, 3, b3, y2, 1));
    assertThat(broken(Rule.STEPS_BUILD, plan))
        .containsExactly(
            "The steps build stack Y1 from the bottom as B1, B2; the plan says B2, B1.");
  }

  @Test
  void offOrderHoldsWithinALoadAndBetweenLoads() {
    PlanBuilder inOrder = aPlan().stack(y1, "B1", "B2").stack(y2, "B3");
    assertThat(broken(Rule.OFF_ORDER, inOrder)).isEmpty();
    PlanBuilder lateLoadFirst =
        aPlan()
            .stack(y1, "B1", "B2")
            .stack(y2, "B3")
            .steps(place(task, 1, b1, y1, 1), place(task, 2, b3, y2, 1), place(task, 3, b2, y1, 2));
    assertThat(broken(Rule.OFF_ORDER, lateLoadFirst))
        .containsExactly("Step 3 takes B2 off after B3, but load L1 arrives before load L2.");
  }

  @Test
  void offOrderDoesNotMindWhenWaitingBundlesAreLiftedOn() {
    PlanBuilder plan =
        allOnY1()
            .steps(
                setDown(task, 1, b1, wait),
                place(task, 2, b2, y1, 1),
                place(task, 3, b3, y2, 1),
                liftOn(task, 4, b1, wait, y1, 2));
    assertThat(broken(Rule.OFF_ORDER, plan)).isEmpty();
  }

  private static Step from(String loadId, Step step) {
    return new Step(
        step.number(),
        StepKind.PLACE,
        step.bundleId(),
        loadId,
        step.toId(),
        step.tier(),
        step.standId(),
        step.reachM(),
        step.massKg(),
        step.capacityKg(),
        step.bearers());
  }
}
