package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
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
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.plan.Effort;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Outline;
import skidway.site.Spot;
import skidway.testkit.BundleBuilder;
import skidway.testkit.PlanBuilder;
import skidway.timber.Bundle;

/** The truck stands at (18, 2), the machine at (20, 5): 3.606 m of travel one way. */
final class EffortRulesTest {
  /** (180 s + 2 * 3.606 m / 1.5 m/s) * 2 people. */
  private static final double PLACE_S = 369.615;

  /** Seconds of one metre there loaded and back empty: 1 / 0.75 + 1 / 1.31. */
  private static final double CARRY_S_PER_M = 2.0967;

  private final Spot y1 = spot("Y1", "yard", 15, 8, 4.5, 0.9);

  private static Effort effort(Task task, PlanBuilder plan) {
    return Audit.of(task, plan.build(task)).effort();
  }

  private static BundleBuilder early() {
    return aBundle("B1").load("L1", 1).piece("W1", 1, 1, 2).piece("W1", 2, 1, 2);
  }

  private static BundleBuilder late() {
    return aBundle("B2").load("L1", 2).piece("W1", 1, 2, 2).piece("W1", 3, 1, 2);
  }

  @Test
  void rehandleCountsPiecesNeededAfterTheFirstNeededBeneath() {
    Task task = task(aSite().build(), early().build(), late().build());
    // On top of B1 course 3 of B2 is in the way; its course 1 is laid as early as that of B1.
    assertThat(effort(task, aPlan().stack(y1, "B1", "B2")).rehandleS()).isEqualTo(60);
    // Beneath is B2: course 2 of B1 comes after course 1 of B2.
    assertThat(effort(task, aPlan().stack(y1, "B2", "B1")).rehandleS()).isEqualTo(60);
  }

  /** Courses 2 and 3 lie over course 1 of their own bundle. */
  @Test
  void insideABundleWhatLiesOverALowerLayerNeededEarlierIsMovedAsideOnce() {
    Bundle mixed =
        aBundle("B1")
            .load("L1", 1)
            .piece("W1", 1, 1, 2, 1)
            .piece("W3", 1, 1, 2, 2)
            .piece("W1", 2, 1, 2, 2)
            .piece("W1", 3, 1, 2, 3)
            .build();
    Bundle low = aBundle("B2").load("L1", 2).piece("W2", 1, 1, 2).build();
    Task task = task(aSite().build(), mixed, low);
    Effort alone = effort(task, aPlan().stack(y1, "B1"));
    // W3's piece is laid as low as the one beneath it, so it is taken first.
    assertThat(alone.insideS()).hasValue(2 * 60);
    assertThat(alone.rehandleS()).isZero();
    // What is aside already is not moved again for the bundle beneath, which needs none of the
    // rest.
    Effort onTop = effort(task, aPlan().stack(y1, "B2", "B1"));
    assertThat(onTop.insideS()).hasValue(2 * 60);
    assertThat(onTop.rehandleS()).isZero();
    Effort onEnd = effort(task, aPlan().stack(rack("R1", "yard", 15, 8, 2, 1), "B1"));
    assertThat(onEnd.insideS()).hasValue(0);
    assertThat(onEnd.rehandleS()).isEqualTo(4 * 20);
  }

  @Test
  void theStatedHoursInsideBundlesAreComparedUnlessThePlanIsFromBefore() {
    Bundle mixed = aBundle("B1").piece("W1", 1, 1, 2, 1).piece("W1", 2, 1, 2, 2).build();
    Task task = task(aSite().build(), mixed);
    PlanBuilder plan = aPlan().stack(y1, "B1");
    Effort found = effort(task, plan);
    assertThat(compared(task, plan, found)).isEmpty();
    assertThat(compared(task, plan, found.withInside(0)))
        .containsExactly(
            "The plan says 0 s of moving pieces aside inside bundles, the audit finds 60 s.");
    Effort before =
        new Effort(
            found.carryS(), found.pickS(), 600, OptionalDouble.empty(), 0, found.machineS(), 0, 0);
    AuditReport report = Audit.of(task, plan.effort(before).build(task));
    assertThat(report.findings()).isEmpty();
    assertThat(report.remarks())
        .contains(
            "Not checked: the hours of moving pieces aside; needs a plan that counts them inside"
                + " bundles too: plan anew.");
  }

  @Test
  void rehandleInARackStandsEachPieceUpOnce() {
    Task task = task(aSite().build(), early().build(), late().build());
    PlanBuilder plan = aPlan().stack(rack("R1", "yard", 15, 8, 2, 1), "B1", "B2");
    assertThat(effort(task, plan).rehandleS()).isEqualTo(80);
  }

  @Test
  void machineTimeIsALiftAndTheWayThereAndBack() {
    Task task = task(aSite().build(), early().build(), late().build());
    assertThat(effort(task, aPlan().stack(y1, "B1", "B2")).machineS())
        .isCloseTo(2 * PLACE_S, within(0.01));
  }

  @Test
  void setDownIsAnotherLiftFromStandToStand() {
    Bundle b1 = early().build();
    Bundle b2 = late().build();
    Task task = task(aSite().build(), b1, b2);
    Spot wait = spot("T1", "yard", 22, 8, 4.5, 0.9);
    PlanBuilder plan =
        aPlan()
            .stack(y1, "B2", "B1")
            .waiting(wait)
            .steps(
                setDown(task, 1, b1, wait),
                place(task, 2, b2, y1, 1),
                liftOn(task, 3, b1, wait, y1, 2));
    assertThat(effort(task, plan).setDownS()).isCloseTo(360, within(0.01));
    assertThat(effort(task, plan).machineS()).isCloseTo(2 * PLACE_S, within(0.01));
  }

  @Test
  void carryIsPeopleTimesTheWayThereAndBack() {
    // From (15, 8.905) straight up to (15, 15.6), 0.3 m off the south wall's outer face, and the
    // piece up to the deck 0.6 m above: 6.695 m + 4.4 * 0.6 m. 120 kg are more than
    // any team lifts: four people with a device.
    Task task = task(aSite().build(), aBundle("B1").piece("W1", 1, 1, 10).build());
    double oneS = CARRY_S_PER_M * (6.695 + 4.4 * 0.6);
    double people = 4;
    assertThat(effort(task, aPlan().stack(y1, "B1")).carryS())
        .isCloseTo(people * oneS, within(0.03 * people * oneS));
  }

  @Test
  void carryOfExactlyATeamsShareTakesNoOneMore() {
    double massKg = aBundle("B1").piece("W1", 1, 1, 2.3).build().pieces().get(0).mass().likelyKg();
    // Three lift half of what all could: a trifle more than 1.5 shares, as rounding makes it.
    double shareKg = massKg / 1.5 * (1 - 1e-12);
    assertThat(massKg / shareKg).isGreaterThan(1.5);
    double threeS = carryS(massKg / 1.4);
    assertThat(carryS(shareKg)).isEqualTo(threeS);
    assertThat(carryS(massKg / 1.6)).isCloseTo(threeS * 4 / 3, within(1e-6));
    assertThat(carryS(massKg / 1.3)).isCloseTo(threeS * 2 / 3, within(1e-6));
    assertThat(carryS(massKg)).isCloseTo(threeS / 3, within(1e-6));
  }

  @Test
  void carryOfALongPieceTakesTwo() {
    assertThat(oneLightPieceS(2.45)).isGreaterThan(1.9 * oneLightPieceS(2.44));
  }

  private double oneLightPieceS(double lengthM) {
    Settings strong = Settings.defaults().with(Setting.LIFT_PER_PERSON, 100, "easy sums");
    Task task = task(aSite().build(), strong, aBundle("B1").piece("W1", 1, 1, lengthM).build());
    return effort(task, aPlan().stack(y1, "B1")).carryS();
  }

  private double carryS(double perPersonKg) {
    Settings settings =
        Settings.defaults().with(Setting.LIFT_PER_PERSON, perPersonKg, "the crew's own choice");
    Task task = task(aSite().build(), settings, aBundle("B1").piece("W1", 1, 1, 2.3).build());
    return effort(task, aPlan().stack(y1, "B1")).carryS();
  }

  @Test
  void carryGoesRoundWhatIsInTheWay() {
    Task straight = task(aSite().build(), aBundle("B1").piece("W1", 1, 1, 10).build());
    Task round =
        task(
            aSite().keepClear("trench", Outline.box(5, 12.2, 25, 12.6), 0, false).build(),
            aBundle("B1").piece("W1", 1, 1, 10).build());
    double straightS = effort(straight, aPlan().stack(y1, "B1")).carryS();
    double roundS = effort(round, aPlan().stack(y1, "B1")).carryS();
    // Round the trench's end at (5, 12.2) or (25, 12.2), 10 m to the side.
    double roundM = Math.hypot(10, 3.295) + 0.4 + Math.hypot(10, 3.0) + 4.4 * 0.6;
    assertThat(roundS / straightS).isCloseTo(roundM / (6.695 + 4.4 * 0.6), within(0.1));
  }

  @Test
  void theStatedHoursAreComparedKindByKind() {
    Task task = task(aSite().build(), early().build(), late().build());
    PlanBuilder plan = aPlan().stack(y1, "B1", "B2");
    Effort found = effort(task, plan);
    assertThat(compared(task, plan, found)).isEmpty();
    Effort nearly =
        new Effort(
            1.05 * found.carryS(),
            found.pickS() + 0.9,
            found.rehandleS() + 0.9,
            0,
            found.machineS() - 0.9);
    assertThat(compared(task, plan, nearly)).isEmpty();
    Effort wrong = new Effort(3600, 3600, 7200, 3600, 7200);
    assertThat(compared(task, plan, wrong))
        .containsExactly(
            "The plan says 1.0 h of carrying, the audit finds 0.0 h.",
            "The plan says 1.0 h of picking, the audit finds 0.0 h.",
            "The plan says 2.0 h of moving pieces aside, the audit finds 0.0 h.",
            "The plan says 1.0 h of setting down, the audit finds 0.0 h.",
            "The plan says 2.0 h of machine work, the audit finds 0.2 h.");
    Effort tenSeconds =
        new Effort(found.carryS(), found.pickS(), found.rehandleS(), 0, found.machineS() + 10);
    assertThat(compared(task, plan, tenSeconds))
        .containsExactly("The plan says 749 s of machine work, the audit finds 739 s.");
  }

  @Test
  void wherePeopleCannotWalkTheHoursAreNotCompared() {
    Task task =
        task(
            aSite().keepClear("river", Outline.box(-1, 12.2, 41, 12.6), 0, false).build(),
            early().build());
    AuditReport report = Audited.report(task, aPlan().stack(y1, "B1"));
    assertThat(report.remarks())
        .contains(
            "Not checked: the hours of carrying; needs a way on foot to the places of 2 pieces.");
    assertThat(Audited.sentences(Rule.CARRY, report)).isEmpty();
  }

  private static List<String> compared(Task task, PlanBuilder plan, Effort told) {
    return Audit.of(task, plan.effort(told).build(task)).findings().stream()
        .map(Finding::sentence)
        .toList();
  }
}
