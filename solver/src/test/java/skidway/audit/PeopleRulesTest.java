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
import skidway.plan.Margin;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.testkit.BundleBuilder;

/** Pieces of test wood are 0.2 m wide, 0.15 m high and weigh 12 kg a metre. */
final class PeopleRulesTest {
  private static final Spot Y1 = spot("Y1", "yard", 10, 8, 6, 0.9);

  private static AuditReport report(Spot spot, BundleBuilder bundle) {
    return report(Settings.defaults(), spot, bundle);
  }

  private static AuditReport report(Settings settings, Spot spot, BundleBuilder bundle) {
    return Audited.report(
        task(aSite().build(), settings, bundle.build()), aPlan().stack(spot, "B1"));
  }

  private static List<String> notes(Rule rule, AuditReport report) {
    return report.notes().stream().filter(n -> n.rule() == rule).map(Finding::sentence).toList();
  }

  private static List<Margin> margins(Rule rule, AuditReport report) {
    return report.pieceMargins().stream().filter(m -> m.rule() == rule).toList();
  }

  /** Four people lift 4 * 23 kg * 0.5 = 46 kg: 3.83 m of test wood. */
  @Test
  void teamLiftTellsWhatFourPeopleCannotCarry() {
    AuditReport light = report(Y1, aBundle("B1").piece("W1", 1, 1, 3.83));
    assertThat(notes(Rule.TEAM_LIFT, light)).isEmpty();
    AuditReport heavy =
        report(Y1, aBundle("B1").piece("W1", 1, 1, 3.9).piece("W1", 2, 1, 4).piece("W1", 3, 1, 1));
    assertThat(notes(Rule.TEAM_LIFT, heavy))
        .containsExactly(
            "2 of 3 pieces may weigh more than 46 kg, what 4 people lift together: up to 48 kg"
                + " (W1-C2-1), the shortest of them 3.90 m long (W1-C1-1). They are for the machine"
                + " or a lifting device.");
  }

  @Test
  void notesDoNotMakeAPlanUnclean() {
    AuditReport heavy = report(Y1, aBundle("B1").piece("W1", 1, 1, 4));
    assertThat(heavy.notes()).isNotEmpty();
    assertThat(heavy.clean()).isTrue();
  }

  @Test
  void everyKindOfPieceHasItsMargins() {
    AuditReport report =
        report(Y1, aBundle("B1").piece("W1", 1, 1, 2).piece("W1", 2, 1, 2).piece("W1", 3, 1, 3.9));
    assertThat(margins(Rule.TEAM_LIFT, report))
        .extracting(Margin::where)
        .containsExactly(
            "W1-C1-1, worst of 2 of test wood, 0.20 m by 0.15 m, 2.00 m long",
            "W1-C3-1, worst of 1 of test wood, 0.20 m by 0.15 m, 3.90 m long");
    assertThat(margins(Rule.TEAM_LIFT, report).get(0).value()).isCloseTo(24, within(1e-9));
    assertThat(margins(Rule.TEAM_LIFT, report).get(1).limit()).isCloseTo(46, within(1e-9));
    assertThat(margins(Rule.LIFT_INDEX, report)).hasSize(2);
  }

  /**
   * One person, 12 kg, picked at 0.089 + 0.2 = 0.289 m, placed at 0.075 m: there HM 25 / 35, VM
   * 0.7975, DM 1, FM 0.85, CM 0.90 of 23 kg are 10.02 kg.
   */
  @Test
  void liftIndexIsTheWorseOfPickingAndPlacing() {
    AuditReport report = report(Y1, aBundle("B1").piece("W1", 1, 1, 1));
    double placeKg = 23 * 25 / 35.0 * (1 - 0.003 * 67.5) * 0.85 * 0.9;
    assertThat(margins(Rule.LIFT_INDEX, report))
        .singleElement()
        .satisfies(m -> assertThat(m.value()).isCloseTo(12 / placeKg, within(1e-9)));
    assertThat(notes(Rule.LIFT_INDEX, report))
        .containsExactly(
            "1 of 1 pieces ask more of each carrier than the lifting equation recommends, up to 1.20"
                + " times as much (W1-C1-1, when placed at 0.08 m). Take more people, a platform or a"
                + " device. Screening only.");
  }

  /** From a rack, at 75 cm, to course 6: HM 25 / 30, DM 1, nothing lost by height at the rack. */
  @Test
  void liftIndexTakesARackAtKnuckleHeight() {
    AuditReport report =
        report(rack("R1", "yard", 10, 8, 2, 1), aBundle("B1").piece("W1", 6, 1, 1));
    double placeCm = 75 + 7.5;
    double placeKg = 23 * 25 / 30.0 * (1 - 0.003 * (placeCm - 75)) * 0.85 * 0.9;
    assertThat(margins(Rule.LIFT_INDEX, report))
        .singleElement()
        .satisfies(m -> assertThat(m.value()).isCloseTo(12 / placeKg, within(1e-9)));
    assertThat(notes(Rule.LIFT_INDEX, report)).isEmpty();
  }

  @Test
  void liftIndexFallsAsPeopleLiftMoreOften() {
    Settings often = Settings.defaults().with(Setting.LIFT_FREQUENCY, 1, "a fast crew");
    BundleBuilder bundle = aBundle("B1").piece("W1", 1, 1, 1);
    double seldom = margins(Rule.LIFT_INDEX, report(Y1, bundle)).get(0).value();
    double faster = margins(Rule.LIFT_INDEX, report(often, Y1, bundle)).get(0).value();
    assertThat(faster / seldom).isCloseTo(0.85 / 0.75, within(1e-9));
  }

  /** Course 13 lies at 1.80 m: above 1.75 m the equation recommends nothing. */
  @Test
  void aboveReachNothingIsRecommended() {
    AuditReport report = report(Y1, aBundle("B1").piece("W1", 13, 1, 1));
    assertThat(margins(Rule.LIFT_INDEX, report)).isEmpty();
    assertThat(notes(Rule.LIFT_INDEX, report))
        .containsExactly(
            "1 of 1 pieces ask more of each carrier than the lifting equation recommends, at the worst"
                + " where it recommends no lift by hand at all (W1-C13-1, when placed at 1.87 m). Take"
                + " more people, a platform or a device. Screening only.");
  }
}
