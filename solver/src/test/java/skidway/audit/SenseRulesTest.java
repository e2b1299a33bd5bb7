package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.PlanBuilder.place;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.testkit.PlanBuilder;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

final class SenseRulesTest {
  private final Bundle b1 = aBundle("B1").weighing(500).build();
  private final Spot y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private final Task task = task(aSite().build(), b1);
  private final Task paintedSpots = task(aSite().spots(y1).build(), b1);

  private List<String> broken(Rule rule, PlanBuilder plan) {
    return Audited.sentences(rule, task, plan);
  }

  @Test
  void knownNamesWhatTheJobDoesNotHave() {
    Step nonsense =
        new Step(1, StepKind.PLACE, "B9", "L1", "Y9", 1, "M9", 10, 500, 2000, BearerRow.NONE);
    assertThat(broken(Rule.KNOWN, aPlan().stack(y1, "B1", "B9").unplaced("B8").steps(nonsense)))
        .containsExactly(
            "B8 is listed as without a spot, but is not delivered.",
            "Stack Y1 holds B9, which is not delivered.",
            "Step 1 goes to Y9, which is not in the plan.",
            "Step 1 lifts B9, not delivered.",
            "Step 1 lifts from stand M9, which the site does not have.");
  }

  @Test
  void knownWantsABundleInEveryStack() {
    assertThat(broken(Rule.KNOWN, aPlan().stack(y1)))
        .containsExactly("Stack Y1 is planned without a bundle.");
  }

  @Test
  void knownWantsOnePlaceForOneCode() {
    Spot elsewhere = spot("Y1", "yard", 20, 8, 4.5, 0.9);
    assertThat(broken(Rule.KNOWN, aPlan().stack(y1, "B1").waiting(elsewhere)))
        .containsOnly("The code Y1 stands for two different places.");
  }

  @Test
  void knownKeepsToTheSpotsPaintedOnTheSite() {
    Plan asPainted = aPlan().stack(y1, "B1").build(paintedSpots);
    assertThat(Audited.sentences(Rule.KNOWN, Audit.of(paintedSpots, asPainted))).isEmpty();
    Plan moved = aPlan().stack(spot("Y1", "yard", 10.5, 8, 4.5, 0.9), "B1").build(paintedSpots);
    assertThat(Audited.sentences(Rule.KNOWN, Audit.of(paintedSpots, moved)))
        .containsExactly("Spot Y1 differs from the one given on the site.");
    Plan other = aPlan().stack(spot("Y2", "yard", 10, 8, 4.5, 0.9), "B1").build(paintedSpots);
    assertThat(Audited.sentences(Rule.KNOWN, Audit.of(paintedSpots, other)))
        .containsExactly("Spot Y2 is not given on the site.");
  }

  @Test
  void knownWantsNumbersThatCanBeDrawn() {
    Footprint endless = new Footprint(new Point(10, 8), Double.NaN, Double.POSITIVE_INFINITY, 1);
    Spot absurd =
        new Spot("Y1", "yard", SpotKind.STACK, endless, OpenSide.LEFT, -1, OptionalDouble.of(-5));
    Step step = place(task, 1, b1, y1, 1);
    AuditReport report = Audit.of(task, aPlan().stack(absurd, "B1").steps(step).build(task));
    assertThat(Audited.sentences(Rule.KNOWN, report))
        .containsExactly("Spot Y1 has numbers that cannot be drawn.");
    assertThat(Audited.sentences(Rule.SPOT_MASS, report)).hasSize(1);
  }

  @Test
  void onceWantsABundleInOnePlace() {
    Spot y2 = spot("Y2", "yard", 15, 8, 4.5, 0.9);
    assertThat(broken(Rule.ONCE, aPlan().stack(y1, "B1"))).isEmpty();
    assertThat(broken(Rule.ONCE, aPlan().stack(y1, "B1").stack(y2, "B1")))
        .containsExactly("B1 lies in more than one place: Y1, Y2.");
    assertThat(broken(Rule.ONCE, aPlan().stack(y1, "B1", "B1"))).hasSize(1);
  }

  @Test
  void placedTellsWhetherThePlanOwnsUpToIt() {
    assertThat(broken(Rule.PLACED, aPlan().stack(y1, "B1"))).isEmpty();
    assertThat(broken(Rule.PLACED, aPlan().unplaced("B1"))).containsExactly("B1 has no spot.");
    assertThat(broken(Rule.PLACED, aPlan()))
        .containsExactly("B1 has no spot, and the plan does not say why.");
  }
}
