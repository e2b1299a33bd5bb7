package skidway.job;

import skidway.rules.Setting;
import skidway.units.Measure;

/** Knows what values of a setting are believed; like {@link Bounds}, assumptions, in SI. */
final class SettingRange {
  /** 16 ft, the highest lumber pile handled by hand: 29 CFR 1926.250(b)(8)(iv). */
  static final double HIGHEST_STACK_M = 4.8768;

  private SettingRange() {}

  static Bounds.Range of(Setting setting) {
    String words = '"' + setting.key() + '"';
    return switch (setting) {
      case STACK_HEIGHT ->
          new Bounds.Range(
              words + " (never above 16 ft by hand, 29 CFR 1926.250(b)(8)(iv))",
              Measure.LENGTH,
              0.1,
              HIGHEST_STACK_M);
      case STACK_TIERS -> new Bounds.Range(words, Measure.COUNT, 1, 12);
      case END_OVERHANG, SIDE_OVERHANG, BEARER_REACH -> length(words, 0, 1);
      case BEARER_HEIGHT -> length(words, 0, 0.5);
      case STACK_GAP, WALL_STRIP_INSIDE, WALL_STRIP_OUTSIDE -> length(words, 0, 5);
      case MACHINE_STAND_ROOM, OPENING_SETBACK, DECK_EDGE_SETBACK -> length(words, 0, 15);
      // These widen into areas that people stand or walk on, so they are above 0.
      case OPEN_STRIP -> length(words, 0.1, 10);
      case WALK_WIDTH -> length(words, 0.3, 3);
      case RACK_PIECE_LENGTH -> length(words, 0.1, 3);
      case RACK_PACKING -> new Bounds.Range(words, Measure.RATIO, 0.01, 1);
      case CLIMB_FACTOR -> new Bounds.Range(words, Measure.RATIO, 0, 100);
      default -> byMeasure(words, setting.measure());
    };
  }

  private static Bounds.Range length(String words, double least, double most) {
    return new Bounds.Range(words, Measure.LENGTH, least, most);
  }

  private static Bounds.Range byMeasure(String words, Measure measure) {
    return switch (measure) {
      case LENGTH -> new Bounds.Range(words, measure, 0, 30);
      case MASS -> new Bounds.Range(words, measure, 1, 200);
      case PRESSURE -> new Bounds.Range(words, measure, 0.1, 1000);
      case SPEED -> new Bounds.Range(words, measure, 0.05, 15);
      case DURATION -> new Bounds.Range(words, measure, 0, 36_000);
      case ANGLE -> new Bounds.Range(words, measure, -360, 360);
      case RATIO -> new Bounds.Range(words, measure, 0, 100);
      case COUNT -> new Bounds.Range(words, measure, 1, 20);
    };
  }
}
