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
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Outline;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.timber.BearerRow;

final class GroundRulesTest {
  private static final Spot IN_YARD = spot("Y1", "yard", 10, 8, 4.5, 0.9);
  private static final Spot ON_DECK = spot("D1", "deck", 15, 19.5, 4, 0.9);

  private static Yard yard(double allowedKpa, OptionalDouble slope) {
    return new Yard(
        "yard", Outline.box(5, 6, 30, 12), allowedKpa, "", slope, OptionalDouble.empty());
  }

  private static Task on(Yard yard, double massKg) {
    return task(aSite().yards(yard).build(), aBundle("B1").weighing(massKg).build());
  }

  /** A bundle of 4 by 0.6 m on some bearers. */
  private static List<String> broken(Rule rule, Task task, Spot spot, BearerRow row) {
    return Audited.sentences(rule, task, aPlan().stack(spot, "B1").bearers(any -> row));
  }

  private static List<String> onSlope(double slope, Spot spot) {
    Task task = on(yard(70, OptionalDouble.of(slope)), 100);
    return Audited.sentences(Rule.YARD_SLOPE, task, aPlan().stack(spot, "B1"));
  }

  @Test
  void yardSlope() {
    assertThat(onSlope(0.05, IN_YARD)).isEmpty();
    assertThat(onSlope(0.07, IN_YARD))
        .containsExactly("Stack Y1 stands on yard, which falls 0.07, limit 0.05.");
    assertThat(onSlope(0.07, ON_DECK)).isEmpty();
  }

  @Test
  void groundPressureIsUnderTheBearerThatHasMost() {
    // The middle one of three has 1.8 / 4 of 500 kg: 0.45 * 500 * 9.80665 / 0.089 / 0.6 = 41.3 kPa.
    BearerRow three = new BearerRow(3, 1.8, 0.2, 0.6);
    assertThat(broken(Rule.GROUND_PRESSURE, firm(41.4), IN_YARD, three)).isEmpty();
    assertThat(broken(Rule.GROUND_PRESSURE, firm(41), IN_YARD, three))
        .containsExactly("Stack Y1 presses 41.3 kPa on yard under a bearer, limit 41.0 kPa.");
    assertThat(broken(Rule.GROUND_PRESSURE, firm(1), ON_DECK, three)).isEmpty();
    // Two have half each: 45.9 kPa. Of four, far in, the end ones have (1 + 1 / 3) / 4: 30.6 kPa.
    BearerRow two = new BearerRow(2, 3.4, 0.3, 0.6);
    assertThat(broken(Rule.GROUND_PRESSURE, firm(46), IN_YARD, two)).isEmpty();
    assertThat(broken(Rule.GROUND_PRESSURE, firm(45.8), IN_YARD, two)).hasSize(1);
    BearerRow farIn = new BearerRow(4, 2.0 / 3, 1, 0.6);
    assertThat(broken(Rule.GROUND_PRESSURE, firm(30.7), IN_YARD, farIn)).isEmpty();
    assertThat(broken(Rule.GROUND_PRESSURE, firm(30.5), IN_YARD, farIn)).hasSize(1);
  }

  private static Task firm(double allowedKpa) {
    return on(yard(allowedKpa, OptionalDouble.empty()), 500);
  }

  @Test
  void groundPressureFallsWithLongBearersAsLongAsTheyMayBe() {
    // 0.6 + 2 * 0.15 = 0.90 m, half the gap on both sides, told to 5 cm.
    BearerRow longest = new BearerRow(3, 1.8, 0.2, 0.95);
    assertThat(broken(Rule.GROUND_PRESSURE, firm(27), IN_YARD, longest)).isEmpty();
    BearerRow tooLong = new BearerRow(3, 1.8, 0.2, 1.0);
    assertThat(broken(Rule.GROUND_PRESSURE, firm(27), IN_YARD, tooLong))
        .containsExactly(
            "Stack Y1 lies on bearers 1.00 m long, of which no more than 0.90 m press on the"
                + " ground.");
  }

  @Test
  void groundPressureOfARackIsUnderItsTwoRails() {
    // 500 * 9.80665 / (2 * 0.089 * 1) = 27.5 kPa.
    Spot rack = rack("R1", "yard", 10, 8, 1, 0.5);
    assertThat(broken(Rule.GROUND_PRESSURE, firm(27.6), rack, BearerRow.NONE)).isEmpty();
    assertThat(broken(Rule.GROUND_PRESSURE, firm(27), rack, BearerRow.NONE))
        .containsExactly("Rack R1 presses 27.5 kPa on yard under a rail, limit 27.0 kPa.");
  }

  @Test
  void groundClearance() {
    assertThat(onBearersOf(0.089, IN_YARD)).isEmpty();
    assertThat(onBearersOf(0.05, IN_YARD))
        .containsExactly("Stack Y1 lies 0.05 m above yard, limit 0.09 m.");
    assertThat(onBearersOf(0.05, ON_DECK)).isEmpty();
  }

  private static List<String> onBearersOf(double heightM, Spot spot) {
    Settings settings = Settings.defaults().with(Setting.BEARER_HEIGHT, heightM, "flat");
    Task task = task(aSite().build(), settings, aBundle("B1").weighing(100).build());
    return Audited.sentences(Rule.GROUND_CLEARANCE, task, aPlan().stack(spot, "B1"));
  }
}
