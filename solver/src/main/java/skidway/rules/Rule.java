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
      "A stack stands wholly on one deck or yard; its open strip stays on the deck, or on open ground"
          + " inside the site.",
      "29 CFR 1926.250(a)(1), stable piles",
      Measure.LENGTH),
  DECK_EDGE(
      "deckEdge",
      Level.HARD,
      "Within the setback of a deck's edge a stack stands only where a wall is already higher than it.",
      "29 CFR 1926.250(b)(1), exterior walls lower than the stack",
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
      "common practice",
      Measure.LENGTH),
  EXCAVATION_EDGE(
      "excavationEdge",
      Level.HARD,
      "No stack stands nearer to an excavation than its setback, nor nearer than the excavation is"
          + " deep.",
      "29 CFR 1926.651(j)(2); what depth adds is an assumption",
      Measure.LENGTH,
      Setting.EXCAVATION_SETBACK,
      Setting.EXCAVATION_DEPTH_SHARE),
  OVERHEAD_LINE(
      "overheadLine",
      Level.HARD,
      "No stack stands within the clearance of an overhead line, seen from above.",
      "29 CFR 1926.1408 Table A",
      Measure.LENGTH,
      Setting.LINE_TO_50_KV,
      Setting.LINE_TO_200_KV,
      Setting.LINE_TO_350_KV,
      Setting.LINE_TO_500_KV,
      Setting.LINE_TO_750_KV,
      Setting.LINE_TO_1000_KV),
  YARD_SLOPE(
      "yardSlope",
      Level.HARD,
      "No stack stands on ground steeper than the limit.",
      "29 CFR 1926.250(a)(1), stable piles; the figure is an assumption",
      Measure.RATIO,
      Setting.YARD_SLOPE),
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
      Setting.HAND_PILE_HEIGHT,
      Setting.WEDGE_HEIGHT,
      Setting.BEARER_HEIGHT),
  STACK_SLENDER(
      "stackSlender",
      Level.HARD,
      "Above the underside of each bundle a stack is no more times as high as the bundle is wide than"
          + " the limit, less on a slope.",
      "from memory, confirm; the slope by statics: width over height less the slope",
      Measure.RATIO,
      Setting.HEIGHT_TO_WIDTH),
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
      "A stack's load over the deck that it bears on is within the deck's allowance.",
      "29 CFR 1926.250(a)(2), safe floor load not exceeded; the allowance is the floor designer's",
      Measure.PRESSURE,
      Setting.BEARER_REACH),
  BEARING_APART(
      "bearingApart",
      Level.HARD,
      "No part of a deck is counted under two stacks.",
      "29 CFR 1926.250(a)(2), safe floor load not exceeded",
      Measure.LENGTH,
      Setting.BEARER_REACH),
  JOIST_BENDING(
      "joistBending",
      Level.HARD,
      "All stacks together bend no joist more than the load it was designed for.",
      "29 CFR 1926.250(a)(2); simple-span statics, AWC Design Aid 6; the design is the floor"
          + " designer's",
      Measure.MOMENT,
      Setting.BEARER_REACH),
  JOIST_SHEAR(
      "joistShear",
      Level.HARD,
      "All stacks together put no more shear into a joist than the load it was designed for.",
      "29 CFR 1926.250(a)(2); simple-span statics, AWC Design Aid 6; the design is the floor"
          + " designer's",
      Measure.FORCE,
      Setting.BEARER_REACH),
  ZONE_TOTAL(
      "zoneTotal",
      Level.HARD,
      "All that lies on a deck or yard weighs no more than its total.",
      "29 CFR 1926.250(a)(2), safe floor load not exceeded; the total is the designer's",
      Measure.MASS),
  GROUND_PRESSURE(
      "groundPressure",
      Level.HARD,
      "Bearers press on a yard no harder than its ground is allowed to be pressed.",
      "presumptive values: IBC 2012 Table 1806.2, IRC R401.4.1; topsoil and fill are not covered",
      Measure.PRESSURE,
      Setting.BEARER_WIDTH,
      Setting.BEARER_CLOSEST,
      Setting.BEARER_PROUD,
      Setting.STACK_GAP),
  GROUND_CLEARANCE(
      "groundClearance",
      Level.HARD,
      "Bearers on the ground are high enough for air and forks.",
      "common practice",
      Measure.LENGTH,
      Setting.GROUND_CLEARANCE,
      Setting.BEARER_HEIGHT),
  BEARER_SPACING(
      "bearerSpacing",
      Level.HARD,
      "A bundle lies on two bearers or more, no farther apart than the limit.",
      "common practice",
      Measure.LENGTH,
      Setting.BEARER_SPACING),
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
      "the machine's own load chart; no interpolation between rows, rigging counts as load: BC Crane"
          + " Safety, load charts; a load centre beyond the plate's lowers the capacity in"
          + " proportion, as fork truck training has it",
      Measure.MASS),
  SLING_LOAD(
      "slingLoad",
      Level.HARD,
      "The pull in each of two slings is within what the sling is rated for.",
      "29 CFR 1926.251(a); statics: half the load over the sine of the angle",
      Measure.MASS),
  SLING_ANGLE(
      "slingAngle",
      Level.HARD,
      "Slings hang no flatter than the limit.",
      "from memory, confirm (ASME B30.9)",
      Measure.ANGLE,
      Setting.SLING_ANGLE),
  TRAVEL_WIDTH(
      "travelWidth",
      Level.HARD,
      "A lane is wide enough for the machine with the bundle that it carries along it.",
      "29 CFR 1910.176(a), safe clearance for mechanical handling; the figure from a letter"
          + " withdrawn since",
      Measure.LENGTH,
      Setting.TRAVEL_CLEARANCE,
      Setting.TRAVEL_LEAST),
  LINE_LIFT(
      "lineLift",
      Level.HARD,
      "Neither the hook nor a load that turns on it comes within the clearance of an overhead line,"
          + " seen from above.",
      "29 CFR 1926.1408 Table A",
      Measure.LENGTH,
      Setting.LINE_TO_50_KV,
      Setting.LINE_TO_200_KV,
      Setting.LINE_TO_350_KV,
      Setting.LINE_TO_500_KV,
      Setting.LINE_TO_750_KV,
      Setting.LINE_TO_1000_KV),

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
      Setting.TEAM_OF_TWO,
      Setting.TEAM_OF_THREE,
      Setting.TEAM_MOST,
      Setting.ONE_PERSON_LENGTH,
      Setting.LOADED_SPEED,
      Setting.EMPTY_SPEED,
      Setting.CLIMB_FACTOR,
      Setting.STEP_OVER),
  PICK_HEIGHT(
      "pickHeight",
      Level.SOFT,
      "Pieces picked low down or high up cost time.",
      "times are settings; height factor of the revised lifting equation, NIOSH 94-110 (rev. 9/2021)"
          + " p. 9",
      Measure.DURATION,
      Setting.PICK_TIME),
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
      Setting.MACHINE_CREW),

  HAND_UNLOAD(
      "handUnload",
      Level.SOFT,
      "Where no machine unloads, people carry each piece from a long side of the truck to its spot,"
          + " lay it there and walk back.",
      "times are settings",
      Measure.DURATION,
      Setting.LIFT_PER_PERSON,
      Setting.TEAM_OF_TWO,
      Setting.TEAM_OF_THREE,
      Setting.TEAM_MOST,
      Setting.ONE_PERSON_LENGTH,
      Setting.LOADED_SPEED,
      Setting.EMPTY_SPEED,
      Setting.CLIMB_FACTOR,
      Setting.LAY_PIECE,
      Setting.PILE_SET_UP),

  MOVE_TIME(
      "moveTime",
      Level.SOFT,
      "A bundle that lies somewhere already is moved, or lifted aside and back, and tagged anew.",
      "times are settings",
      Measure.DURATION,
      Setting.MACHINE_LIFT,
      Setting.MACHINE_SPEED,
      Setting.MACHINE_CREW,
      Setting.RETAG),

  // What a plan cannot settle.
  TEAM_LIFT(
      "teamLift",
      Level.NOTE,
      "A piece is light enough for a team of people; a heavier one is for the machine or a lifting"
          + " device.",
      "load constant of NIOSH 94-110 (rev. 9/2021) p. 7; team factors of UK guidance L23",
      Measure.MASS,
      Setting.LIFT_PER_PERSON,
      Setting.TEAM_OF_TWO,
      Setting.TEAM_OF_THREE,
      Setting.TEAM_MOST,
      Setting.ONE_PERSON_LENGTH),
  LIFT_INDEX(
      "liftIndex",
      Level.NOTE,
      "What each carrier takes of a piece is no more than the lifting equation recommends, where it"
          + " is picked and where it is placed; screening only.",
      "NIOSH 94-110 (rev. 9/2021) p. 20; long timbers, teams and carrying are outside its validity",
      Measure.RATIO,
      Setting.LIFT_FREQUENCY);

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
