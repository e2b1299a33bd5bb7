package skidway.rules;

import java.util.List;
import skidway.units.Measure;

/**
 * Every rule a plan is held to, in the order of RULES.md. The id is the one word that finds a rule
 * everywhere: in code, in tests, in the audit's report, in the plan file.
 */
public enum Rule {
  // A plan that makes sense at all.
  KNOWN(
      "known",
      Level.HARD,
      "A plan speaks only of bundles and zones that exist.",
      "common sense",
      Measure.COUNT),
  ONCE(
      "once", Level.HARD, "Every bundle lies in at most one place.", "common sense", Measure.COUNT),

  // Where a spot may be.
  INSIDE_ZONE(
      "insideZone",
      Level.HARD,
      "A stack stands wholly on one deck or yard, back from a deck's edge; its open strip stays on the"
          + " deck, or on open ground inside the site.",
      "29 CFR 1926.250(b)(1), exterior walls lower than the stack; 1926.250(a)(1), stable piles",
      Measure.LENGTH,
      Setting.DECK_EDGE_SETBACK),
  FLOOR_OPENING(
      "floorOpening",
      Level.HARD,
      "Stacks keep their distance from floor openings.",
      "29 CFR 1926.250(b)(1), hoistways and floor openings",
      Measure.LENGTH,
      Setting.OPENING_SETBACK),
  WORKING_STRIP(
      "workingStrip",
      Level.HARD,
      "No stack stands in the strip where people work along a wall.",
      "common practice",
      Measure.LENGTH,
      Setting.WALL_STRIP_INSIDE,
      Setting.WALL_STRIP_OUTSIDE),
  LANES_CLEAR(
      "lanesClear",
      Level.HARD,
      "No stack stands in a lane.",
      "29 CFR 1926.250(a)(3), aisles and passageways kept clear",
      Measure.LENGTH),
  TRUCK_CLEAR(
      "truckClear",
      Level.HARD,
      "No stack stands where a truck stands.",
      "common practice",
      Measure.LENGTH),
  MACHINE_CLEAR(
      "machineClear",
      Level.HARD,
      "No stack stands where the machine sets up to lift.",
      "common practice",
      Measure.LENGTH,
      Setting.MACHINE_STAND_ROOM),
  KEEP_CLEAR(
      "keepClear",
      Level.HARD,
      "No stack stands on a keep-clear or within its margin.",
      "29 CFR 1926.651(j)(2) for excavation edges (2 ft or more); otherwise common practice",
      Measure.LENGTH),
  SPOTS_APART(
      "spotsApart",
      Level.HARD,
      "No stack stands nearer to another than the gap, or on its open strip.",
      "29 CFR 1926.250(a)(3), aisles and passageways kept clear",
      Measure.LENGTH,
      Setting.STACK_GAP,
      Setting.OPEN_STRIP),

  // What a spot can take.
  FITS_SPOT(
      "fitsSpot",
      Level.HARD,
      "A bundle is no longer and no wider than its spot.",
      "common sense",
      Measure.LENGTH),
  STACK_HEIGHT(
      "stackHeight",
      Level.HARD,
      "A stack with its bearers is no higher than the limit.",
      "common practice; never above 16 ft handled by hand, 29 CFR 1926.250(b)(8)(iv)",
      Measure.LENGTH,
      Setting.STACK_HEIGHT,
      Setting.BEARER_HEIGHT),
  STACK_TIERS(
      "stackTiers",
      Level.HARD,
      "A stack has no more tiers than the limit.",
      "common practice",
      Measure.COUNT,
      Setting.STACK_TIERS),
  TIER_SUPPORT(
      "tierSupport",
      Level.HARD,
      "A bundle reaches no further beyond any bundle beneath it than the overhang limit.",
      "29 CFR 1926.250(a)(1), tiers secured against sliding, falling, collapse; the figures are common practice",
      Measure.LENGTH,
      Setting.END_OVERHANG,
      Setting.SIDE_OVERHANG),
  SPOT_MASS(
      "spotMass",
      Level.HARD,
      "A stack weighs no more than its spot may carry.",
      "the site lead",
      Measure.MASS),
  ZONE_LOAD(
      "zoneLoad",
      Level.HARD,
      "A stack's load over the area it bears on is within the zone's allowance.",
      "29 CFR 1926.250(a)(2), safe floor load not exceeded; the allowance is the floor designer's",
      Measure.PRESSURE,
      Setting.BEARER_REACH),
  RACK_LENGTH(
      "rackLength",
      Level.HARD,
      "A standing rack takes only pieces short enough to stand on end.",
      "common practice",
      Measure.LENGTH,
      Setting.RACK_PIECE_LENGTH),
  RACK_ROOM(
      "rackRoom",
      Level.HARD,
      "The pieces on end in a rack have room on its floor.",
      "common practice",
      Measure.RATIO,
      Setting.RACK_PACKING),

  // What the machine can do.
  MACHINE_REACH(
      "machineReach",
      Level.HARD,
      "Every lift is within the machine's reach from a stand.",
      "the machine's own load chart",
      Measure.LENGTH),
  MACHINE_CAPACITY(
      "machineCapacity",
      Level.HARD,
      "Every lift weighs no more than the machine lifts at that reach (next larger reach of its chart).",
      "the machine's own load chart; no interpolation between rows, BC Crane Safety, load charts",
      Measure.MASS),

  // The plan as a whole, and as it is carried out.
  PATHS_OPEN(
      "pathsOpen",
      Level.HARD,
      "With all stacks in place, every stack's open side, every door and the way down are within reach"
          + " on foot.",
      "29 CFR 1926.250(a)(3); width from 29 CFR 1910.36(g)(2)",
      Measure.LENGTH,
      Setting.WALK_WIDTH),
  OFF_ORDER(
      "offOrder",
      Level.HARD,
      "Bundles come off a truck in its own order.",
      "common practice",
      Measure.COUNT),
  STEPS_BUILD(
      "stepsBuild",
      Level.HARD,
      "The unloading steps, done in order, build exactly the planned stacks; no step lifts a bundle"
          + " with another on it.",
      "common practice",
      Measure.COUNT),

  PLACED("placed", Level.MEDIUM, "Every bundle has a spot.", "the job itself", Measure.COUNT),

  CARRY(
      "carry",
      Level.SOFT,
      "People carry each piece from its spot to its place on the wall and walk back.",
      "times are settings",
      Measure.DURATION,
      Setting.LIFT_PER_PERSON,
      Setting.LOADED_SPEED,
      Setting.EMPTY_SPEED,
      Setting.CLIMB_FACTOR,
      Setting.STEP_OVER),
  REHANDLE(
      "rehandle",
      Level.SOFT,
      "A piece that lies over something needed earlier is moved aside and back.",
      "times are settings",
      Measure.DURATION,
      Setting.REHANDLE_PIECE,
      Setting.RACK_PIECE),
  SET_DOWN(
      "setDown",
      Level.SOFT,
      "A bundle that comes off before what belongs under it is set down and lifted again.",
      "times are settings",
      Measure.DURATION,
      Setting.MACHINE_LIFT,
      Setting.MACHINE_SPEED,
      Setting.MACHINE_CREW),
  MACHINE_TIME(
      "machineTime",
      Level.SOFT,
      "The machine takes each bundle from the truck to its spot and drives back.",
      "times are settings",
      Measure.DURATION,
      Setting.MACHINE_LIFT,
      Setting.MACHINE_SPEED,
      Setting.MACHINE_CREW);

  private final String id;
  private final Level level;
  private final String sentence;
  private final String source;
  private final Measure measure;
  private final List<Setting> settings;

  Rule(
      String id,
      Level level,
      String sentence,
      String source,
      Measure measure,
      Setting... settings) {
    this.id = id;
    this.level = level;
    this.sentence = sentence;
    this.source = source;
    this.measure = measure;
    this.settings = List.of(settings);
  }

  public String id() {
    return id;
  }

  public Level level() {
    return level;
  }

  public String sentence() {
    return sentence;
  }

  /** Where the rule comes from; the sources of its numbers are with its settings. */
  public String source() {
    return source;
  }

  /** The quantity in which value, limit and margin of this rule are told. */
  public Measure measure() {
    return measure;
  }

  /** The settings that put numbers into it. */
  public List<Setting> settings() {
    return settings;
  }
}
