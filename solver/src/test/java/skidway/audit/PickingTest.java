package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Effort;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.testkit.BundleBuilder;
import skidway.testkit.PlanBuilder;
import skidway.timber.Bundle;

/** Bearers are 0.1 m high, a pick out of reach costs 60 s, a piece of 1 m weighs 12 kg. */
final class PickingTest {
  private static final Settings EASY =
      Settings.defaults().with(Setting.BEARER_HEIGHT, 0.1, "easy sums");
  private static final Spot Y1 = spot("Y1", "yard", 10, 8, 4.5, 0.9);

  private static BundleBuilder bundle(int number, double heightM) {
    return aBundle("B" + number).load("L1", number).size(4, 0.6, heightM);
  }

  private static double pickS(Spot spot, BundleBuilder... builders) {
    return report(spot, builders).effort().pickS();
  }

  private static AuditReport report(Spot spot, BundleBuilder... builders) {
    Bundle[] bundles = List.of(builders).stream().map(BundleBuilder::build).toArray(Bundle[]::new);
    Task task = task(aSite().build(), EASY, bundles);
    String[] ids = List.of(bundles).stream().map(Bundle::id).toArray(String[]::new);
    return Audited.report(task, aPlan().stack(spot, ids));
  }

  /** 0.1 + 0.65 m is knuckle height; 0.1 + 0.15 m is half a metre below: 0.003 * 50 * 60 s. */
  @Test
  void pickHeightCostsNothingAtKnuckleHeightAndMoreBelow() {
    assertThat(pickS(Y1, bundle(1, 1.3).piece("W1", 1, 1, 1))).isCloseTo(0, within(1e-9));
    assertThat(pickS(Y1, bundle(1, 0.3).piece("W1", 1, 1, 1))).isCloseTo(9, within(1e-9));
  }

  /**
   * Two layers of 0.15 m; on top of it all a second bundle, its middle at 0.1 + 0.3 + 0.1 + 0.1.
   */
  @Test
  void pickHeightCountsLayersAndWhatIsBeneathWithItsBearers() {
    double lowS = 60 * 0.003 * (75 - 17.5);
    double highS = 60 * 0.003 * (75 - 32.5);
    assertThat(pickS(Y1, bundle(1, 0.3).piece("W1", 1, 1, 1, 1).piece("W1", 2, 1, 1, 2)))
        .isCloseTo(lowS + highS, within(1e-9));
    assertThat(pickS(Y1, bundle(1, 0.3).piece("W1", 1, 1, 1), bundle(2, 0.2).piece("W1", 2, 1, 1)))
        .isCloseTo(9 + 60 * 0.003 * 15, within(1e-9));
  }

  @Test
  void pickHeightAboveReachCostsThePickTimeAndNothingJustBelowIt() {
    assertThat(pickS(Y1, bundle(1, 3.3).piece("W1", 1, 1, 1)))
        .isCloseTo(60 * 0.003 * 100, within(1e-9));
    assertThat(pickS(Y1, bundle(1, 3.302).piece("W1", 1, 1, 1))).isCloseTo(60, within(1e-9));
  }

  /** 36 kg take four people by default: more than three lift, 34.5 kg. */
  @Test
  void pickHeightCostsEachCarrier() {
    assertThat(pickS(Y1, bundle(1, 0.3).piece("W1", 1, 1, 3))).isCloseTo(4 * 9, within(1e-9));
  }

  @Test
  void pickHeightIsNoMatterInARack() {
    Spot rack = rack("R1", "yard", 10, 8, 2, 1);
    assertThat(pickS(rack, bundle(1, 0.3).piece("W1", 1, 1, 1))).isZero();
  }

  @Test
  void theStatedHoursOfPickingAreCompared() {
    Task task = task(aSite().build(), EASY, bundle(1, 0.3).piece("W1", 1, 1, 1).build());
    PlanBuilder plan = aPlan().stack(Y1, "B1");
    assertThat(told(task, plan, 9.9)).isEmpty();
    assertThat(told(task, plan, 11))
        .containsExactly("The plan says 11 s of picking, the audit finds 9 s.");
  }

  private static List<String> told(Task task, PlanBuilder plan, double pickS) {
    return Audited.sentences(Rule.PICK_HEIGHT, task, plan.effort(new Effort(0, pickS, 0, 0, 0)));
  }
}
