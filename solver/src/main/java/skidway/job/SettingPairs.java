package skidway.job;

import java.util.List;
import skidway.rules.Setting;
import skidway.rules.Settings;

/** Checks that settings which bound each other leave something between them. */
final class SettingPairs {
  private static final double ROUNDING = 1e-6;
  private static final String GROWS = "a line of more voltage asks for no less room";

  /** The first is never above the second; the reason says what would happen otherwise. */
  private record Pair(Setting low, Setting high, String reason) {}

  private static final List<Pair> PAIRS =
      List.of(
          new Pair(
              Setting.GROUND_CLEARANCE,
              Setting.BEARER_HEIGHT,
              "bearers lower than the clearance they are to give let no stack onto a yard"),
          new Pair(
              Setting.BEARER_CLOSEST,
              Setting.BEARER_SPACING,
              "no row of bearers is farther apart than the one and closer than the other"),
          new Pair(
              Setting.STACK_HEIGHT,
              Setting.HAND_PILE_HEIGHT,
              "a stack is never higher than what hands may pile"),
          new Pair(
              Setting.BEARER_HEIGHT,
              Setting.STACK_HEIGHT,
              "a stack's height counts its bearers, so none could stand"),
          new Pair(
              Setting.TEAM_OF_THREE,
              Setting.TEAM_OF_TWO,
              "each of three lifts no more than each of two"),
          new Pair(Setting.LINE_TO_50_KV, Setting.LINE_TO_200_KV, GROWS),
          new Pair(Setting.LINE_TO_200_KV, Setting.LINE_TO_350_KV, GROWS),
          new Pair(Setting.LINE_TO_350_KV, Setting.LINE_TO_500_KV, GROWS),
          new Pair(Setting.LINE_TO_500_KV, Setting.LINE_TO_750_KV, GROWS),
          new Pair(Setting.LINE_TO_750_KV, Setting.LINE_TO_1000_KV, GROWS));

  private SettingPairs() {}

  /** Reports each pair that the job turned round, at the one of them that it changed. */
  static void check(Fields f, Settings settings) {
    for (Pair pair : PAIRS) {
      if (settings.get(pair.low()) > settings.get(pair.high()) + ROUNDING) {
        Setting changed = settings.change(pair.low()).isPresent() ? pair.low() : pair.high();
        f.report(
            f.at(changed.key()),
            words(pair.low(), settings, f) + " above " + words(pair.high(), settings, f),
            pair.reason(),
            "change one of the two");
      }
    }
  }

  private static String words(Setting setting, Settings settings, Fields f) {
    return "\"" + setting.key() + "\" " + f.figure(setting.measure(), settings.get(setting));
  }
}
