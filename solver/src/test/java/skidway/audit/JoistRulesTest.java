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

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.testkit.BundleBuilder;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/**
 * Joists run north every 0.5 m, held up at y = 16, 20 and 24. A bundle of 4 by 0.8 m lies east to
 * west on four bearers, each over another joist; each of the two in the middle has (4 - 0.6096) / 3
 * / 4 = 0.28253 of 400 kg, 1108.3 N, spread over 0.8 m of its joist.
 */
final class JoistRulesTest {
  private static final Spot MIDDLE = spot("D1", "deck", 15, 18, 4, 0.8);

  private static BundleBuilder bundle(String id, int order) {
    return aBundle(id).load("L1", order).size(4, 0.8, 0.4).weighing(400);
  }

  private static Joists joists(JoistDesign design, double... supportsY) {
    List<Point> supports = Arrays.stream(supportsY).mapToObj(y -> new Point(15, y)).toList();
    return new Joists(90, 0.5, new Point(10, 16), supports, design);
  }

  private static Task on(Joists joists, BundleBuilder... bundles) {
    return task(
        aSite().joists(joists).build(),
        List.of(bundles).stream().map(BundleBuilder::build).toArray(Bundle[]::new));
  }

  /** On a span of 4 m a live load of 1 kPa bends a joist by 1 kN m and shears it by 1 kN. */
  private static Joists bearing(double kpa) {
    return joists(new JoistDesign.LiveLoad(kpa), 24, 16, 20);
  }

  private static List<String> broken(Rule rule, Joists joists, Spot spot) {
    return Audited.sentences(rule, on(joists, bundle("B1", 1)), aPlan().stack(spot, "B1"));
  }

  @Test
  void joistBendingInTheMiddleOfASpan() {
    // 1108.27 / 2 * (4 / 2 - 0.8 / 4) = 997.4 N m.
    assertThat(broken(Rule.JOIST_BENDING, bearing(0.9975), MIDDLE)).isEmpty();
    assertThat(broken(Rule.JOIST_BENDING, bearing(0.9973), MIDDLE)).hasSize(1);
    assertThat(broken(Rule.JOIST_BENDING, bearing(0.9), MIDDLE))
        .singleElement()
        .asString()
        .startsWith("Stack D1 and what lies near it bend the joist of deck at (1")
        .endsWith(".50 m, 18.00 m) by 1.00 kN m, limit 0.90 kN m.");
    assertThat(broken(Rule.JOIST_SHEAR, bearing(0.9), MIDDLE)).isEmpty();
  }

  @Test
  void whatStandsBeyondTheLastSupportIsSaidNotToBeChecked() {
    Joists shorter = joists(new JoistDesign.LiveLoad(9), 17.7, 24);
    Task task = on(shorter, bundle("B1", 1));
    assertThat(Audited.report(task, aPlan().stack(MIDDLE, "B1")).remarks())
        .contains(
            "Not checked: what Stack D1 does to joists of deck beyond their last support; needs a"
                + " support there.");
    Task held = on(bearing(9), bundle("B1", 1));
    assertThat(Audited.report(held, aPlan().stack(MIDDLE, "B1")).remarks())
        .noneMatch(remark -> remark.contains("beyond"));
  }

  @Test
  void joistShearNearASupport() {
    // 1108.27 * (4 - 0.6) / 4 = 942.0 N.
    Spot atBeam = spot("D1", "deck", 15, 16.6, 4, 0.8);
    assertThat(broken(Rule.JOIST_SHEAR, bearing(0.9421), atBeam)).isEmpty();
    assertThat(broken(Rule.JOIST_SHEAR, bearing(0.94), atBeam))
        .singleElement()
        .asString()
        .startsWith("Stack D1 and what lies near it shear the joist of deck at (1")
        .endsWith(".50 m, 18.00 m) by 0.94 kN, limit 0.94 kN (they differ by less than is shown).");
    assertThat(broken(Rule.JOIST_BENDING, bearing(0.94), atBeam)).isEmpty();
  }

  @Test
  void whatTheFloorWeighsIsTakenOffTheTimbersStrength() {
    // 7e6 * 2e-4 = 1400 N m less 500 * 0.5 * 4 * 4 / 8 = 500 N m.
    JoistDesign lumber = new JoistDesign.Lumber("2x8", 7e6, 1e6, 2e-4, 3e-3, 0.5, "test");
    assertThat(broken(Rule.JOIST_BENDING, joists(lumber, 16, 20, 24), MIDDLE)).hasSize(1);
    JoistDesign light = new JoistDesign.Lumber("2x8", 7e6, 1e6, 2e-4, 3e-3, 0.4, "test");
    assertThat(broken(Rule.JOIST_BENDING, joists(light, 16, 20, 24), MIDDLE)).isEmpty();
  }

  @Test
  void aSpanWithNothingLeftIsNotHiddenByOneThatIsNotBent() {
    // The rear rail lies along the line of support at y = 20: it bends neither span, and no span
    // has anything left beside the floor itself.
    JoistDesign weak = new JoistDesign.Lumber("2x4", 1e6, 1e9, 1e-5, 3e-3, 0.5, "test");
    Spot rack = rack("R1", "deck", 15, 19.5, 2, 1);
    assertThat(broken(Rule.JOIST_BENDING, joists(weak, 16, 20, 24), rack)).hasSize(1);
  }

  @Test
  void allStacksOnTheDeckAddUp() {
    // Each alone, 1 m off a support: 0.675 * 1108.27 = 748.1 N m; both together 1108.3 N m.
    Spot south = spot("D1", "deck", 15, 17, 4, 0.8);
    Spot north = spot("D2", "deck", 15, 19, 4, 0.8);
    assertThat(broken(Rule.JOIST_BENDING, bearing(0.75), south)).isEmpty();
    assertThat(broken(Rule.JOIST_BENDING, bearing(0.75), north)).isEmpty();
    Task both = on(bearing(1.1), bundle("B1", 1), bundle("B2", 2));
    assertThat(
            Audited.sentences(
                Rule.JOIST_BENDING, both, aPlan().stack(south, "B1").stack(north, "B2")))
        .hasSize(2);
    Task firm = on(bearing(1.109), bundle("B1", 1), bundle("B2", 2));
    assertThat(
            Audited.sentences(
                Rule.JOIST_BENDING, firm, aPlan().stack(south, "B1").stack(north, "B2")))
        .isEmpty();
  }

  @Test
  void aBundleThatWaitsLoadsJoistsTogetherWithTheStacks() {
    Spot south = spot("T1", "deck", 15, 17, 4, 0.8);
    Spot north = spot("D2", "deck", 15, 19, 4, 0.8);
    Spot yard = spot("Y1", "yard", 10, 8, 4.5, 0.9);
    Task task = on(bearing(1.1), bundle("B1", 1), bundle("B2", 2));
    Bundle b1 = task.delivery().bundles().get(0);
    Bundle b2 = task.delivery().bundles().get(1);
    assertThat(
            Audited.sentences(
                Rule.JOIST_BENDING,
                task,
                aPlan()
                    .stack(yard, "B1")
                    .stack(north, "B2")
                    .waiting(south)
                    .steps(
                        setDown(task, 1, b1, south),
                        place(task, 2, b2, north, 1),
                        liftOn(task, 3, b1, south, yard, 1))))
        .hasSize(2)
        .anyMatch(s -> s.startsWith("B1 at waiting place T1 and what lies near it bend"));
  }

  @Test
  void aRackStandsOnTwoRails() {
    // 200 kg: a rail of 2 m has 980.7 N, a joist under it a quarter, 245.2 N, at 1.5 m from each
    // support; 245.2 * 1.5 = 367.7 N m.
    Spot rack = rack("R1", "deck", 15, 18, 2, 1);
    Task firm = on(bearing(0.368), bundle("B1", 1).weighing(200));
    assertThat(Audited.sentences(Rule.JOIST_BENDING, firm, aPlan().stack(rack, "B1"))).isEmpty();
    Task weak = on(bearing(0.367), bundle("B1", 1).weighing(200));
    assertThat(Audited.sentences(Rule.JOIST_BENDING, weak, aPlan().stack(rack, "B1"))).hasSize(1);
  }

  @Test
  void longBearersSpreadTheLoadAsFarAsTheyCount() {
    Task task =
        task(
            aSite().joists(bearing(0.98)).build(),
            Settings.defaults().with(Setting.BEARER_REACH, 0.2, "long bearers"),
            bundle("B1", 1).build());
    // Over 1.2 m: 1108.27 / 2 * (2 - 1.2 / 4) = 942.0 N m.
    assertThat(Audited.sentences(Rule.JOIST_BENDING, task, aPlan().stack(MIDDLE, "B1"))).hasSize(1);
    assertThat(
            Audited.sentences(
                Rule.JOIST_BENDING,
                task,
                aPlan()
                    .stack(MIDDLE, "B1")
                    .bearers(row -> new BearerRow(row.count(), row.spacingM(), row.endM(), 3))))
        .isEmpty();
  }

  @Test
  void aStackOfWhichNoStepTellsTheBearersLiesOnItsEnds() {
    // Half of 400 kg at each end: 1961.3 / 2 * (2 - 0.8 / 4) = 1765.2 N m.
    Task firm = on(bearing(1.766), bundle("B1", 1));
    assertThat(Audited.sentences(Rule.JOIST_BENDING, firm, aPlan().stack(MIDDLE, "B1").steps()))
        .isEmpty();
    Task weak = on(bearing(1.765), bundle("B1", 1));
    assertThat(Audited.sentences(Rule.JOIST_BENDING, weak, aPlan().stack(MIDDLE, "B1").steps()))
        .hasSize(1);
  }

  @Test
  void aStackInTheYardLoadsNoJoist() {
    Spot yard = spot("Y1", "yard", 10, 8, 4.5, 0.9);
    assertThat(broken(Rule.JOIST_BENDING, bearing(0.01), yard)).isEmpty();
    assertThat(broken(Rule.JOIST_SHEAR, bearing(0.01), yard)).isEmpty();
  }
}
