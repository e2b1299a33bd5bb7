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
      case HAND_PILE_HEIGHT -> length(words, 0.1, HIGHEST_STACK_M);
      case HEIGHT_TO_WIDTH -> ratio(words, 0.5, 10);
      case STACK_TIERS -> new Bounds.Range(words, Measure.COUNT, 1, 12);
      case END_OVERHANG, SIDE_OVERHANG, BEARER_REACH -> length(words, 0, 1);
      case BEARER_HEIGHT, GROUND_CLEARANCE -> length(words, 0, 0.5);
      // Loads are shared out by these, so they are above 0.
      case BEARER_WIDTH -> length(words, 0.02, 0.5);
      case BEARER_SPACING -> length(words, 0.3, 3);
      case BEARER_CLOSEST -> length(words, 0.1, 3);
      case BEARER_PROUD -> length(words, 0, 2);
      case YARD_SLOPE -> ratio(words, 0, 0.5);
      case STACK_GAP, WALL_STRIP_INSIDE, WALL_STRIP_OUTSIDE -> length(words, 0, 5);
      case MACHINE_STAND_ROOM, OPENING_SETBACK, DECK_EDGE_SETBACK, EXCAVATION_SETBACK ->
          length(words, 0, 15);
      case EXCAVATION_DEPTH_SHARE -> ratio(words, 0, 5);
      case LINE_TO_50_KV,
          LINE_TO_200_KV,
          LINE_TO_350_KV,
          LINE_TO_500_KV,
          LINE_TO_750_KV,
          LINE_TO_1000_KV ->
          length(words, 0, 50);
      // These widen into areas that people stand or walk on, so they are above 0.
      case OPEN_STRIP -> length(words, 0.1, 10);
      case WALK_WIDTH -> length(words, 0.3, 3);
      case RACK_PIECE_LENGTH -> length(words, 0.1, 3);
      case RACK_PACKING -> ratio(words, 0.01, 1);
      case TRAVEL_CLEARANCE, TRAVEL_LEAST -> length(words, 0, 10);
      case SLING_ANGLE -> new Bounds.Range(words, Measure.ANGLE, 0, 90);
      case TEAM_OF_TWO, TEAM_OF_THREE -> ratio(words, 0.1, 1);
      // Long pieces always take two.
      case TEAM_MOST -> new Bounds.Range(words, Measure.COUNT, 2, 4);
      // Beyond, the lifting equation's factor is nil for lifts from low down.
      case LIFT_FREQUENCY -> ratio(words, 0, 8);
      case CLIMB_FACTOR -> ratio(words, 0, 100);
      // Timbers of one layer share it out, and they are never thinner than this.
      case PILE_WIDTH -> length(words, 0.1, 3);
      case STICKER_HEIGHT -> length(words, 0, 0.2);
      case MACHINE_TRIPS -> new Bounds.Range(words, Measure.COUNT, 0, 50);
      case ERECTION_RATE -> new Bounds.Range(words, Measure.COUNT, 1, 1000);
      default -> byMeasure(words, setting.measure());
    };
  }

  private static Bounds.Range length(String words, double least, double most) {
    return new Bounds.Range(words, Measure.LENGTH, least, most);
  }

  private static Bounds.Range ratio(String words, double least, double most) {
    return new Bounds.Range(words, Measure.RATIO, least, most);
  }

  private static Bounds.Range byMeasure(String words, Measure measure) {
    return switch (measure) {
      case LENGTH -> new Bounds.Range(words, measure, 0, 30);
      case MASS -> new Bounds.Range(words, measure, 1, 200);
      case PRESSURE -> new Bounds.Range(words, measure, 0.1, 1000);
      case SPEED -> new Bounds.Range(words, measure, 0.05, 15);
      case DURATION -> new Bounds.Range(words, measure, 0, 36_000);
      case ANGLE -> new Bounds.Range(words, measure, -360, 360);
      case VOLTAGE -> new Bounds.Range(words, measure, 0, 1_500_000);
      case FORCE, MOMENT -> new Bounds.Range(words, measure, 0, 1_000_000);
      case RATIO -> new Bounds.Range(words, measure, 0, 100);
      case COUNT -> new Bounds.Range(words, measure, 1, 20);
    };
  }
}
