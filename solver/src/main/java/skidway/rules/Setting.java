package skidway.rules;

import skidway.units.Measure;

/**
 * A number that a rule or a cost depends on: its key in {@code job.json}, kind, default in SI units
 * and where the default comes from. A published limit ({@link #published}) may be changed only with
 * a reason, which is printed wherever the limit is shown; so may any number of a hard rule, to its
 * {@link #weaker} side.
 */
public enum Setting {
  STACK_HEIGHT(
      "stackHeight",
      Measure.LENGTH,
      1.83,
      Weaker.HIGHER,
      Flag.COMMON_PRACTICE,
      "top bundle within reach of hands; 29 CFR 1926.250(b)(8)(iv) never allows more than 16 ft by hand"),
  STACK_TIERS(
      "stackTiers",
      Measure.COUNT,
      8,
      Weaker.HIGHER,
      Flag.ASSUMPTION,
      "more bundles over one another than a crew keeps apart; a search takes at most 12"),
  END_OVERHANG(
      "endOverhang",
      Measure.LENGTH,
      0.30,
      Weaker.HIGHER,
      Flag.COMMON_PRACTICE,
      "bundle end beyond any bundle beneath it, each end"),
  SIDE_OVERHANG(
      "sideOverhang",
      Measure.LENGTH,
      0.05,
      Weaker.HIGHER,
      Flag.COMMON_PRACTICE,
      "bundle side beyond any bundle beneath it, each side"),
  BEARER_HEIGHT(
      "bearerHeight",
      Measure.LENGTH,
      0.089,
      Weaker.LOWER,
      Flag.COMMON_PRACTICE,
      "4x4 dunnage, 3 1/2 in high"),
  BEARER_REACH(
      "bearerReach",
      Measure.LENGTH,
      0.0,
      Weaker.HIGHER,
      Flag.ASSUMPTION,
      "how far bearers carry the load beyond the stack's sides; 0 counts the footprint alone"),
  OPEN_STRIP(
      "openStrip",
      Measure.LENGTH,
      0.91,
      Weaker.LOWER,
      Flag.SECONDARY,
      "3 ft walkway to the work area, trade housekeeping guidance"),
  STACK_GAP(
      "stackGap",
      Measure.LENGTH,
      0.30,
      Weaker.LOWER,
      Flag.COMMON_PRACTICE,
      "room for hands, bands and forks between stacks; military lumber yards keep 2-3 ft between row ends"),
  WALK_WIDTH(
      "walkWidth",
      Measure.LENGTH,
      0.711,
      Weaker.LOWER,
      Flag.SEEN,
      "28 in exit access, 29 CFR 1910.36(g)(2)",
      true),
  MACHINE_STAND_ROOM(
      "machineStandRoom",
      Measure.LENGTH,
      1.5,
      Weaker.LOWER,
      Flag.ASSUMPTION,
      "room around the point the machine lifts from"),
  WALL_STRIP_INSIDE(
      "wallStripInside",
      Measure.LENGTH,
      0.91,
      Weaker.LOWER,
      Flag.ASSUMPTION,
      "room for people and ladders along a wall's inside face"),
  WALL_STRIP_OUTSIDE(
      "wallStripOutside",
      Measure.LENGTH,
      1.22,
      Weaker.LOWER,
      Flag.ASSUMPTION,
      "room for people and later scaffold along a wall's outside face"),
  OPENING_SETBACK(
      "openingSetback",
      Measure.LENGTH,
      1.829,
      Weaker.LOWER,
      Flag.SEEN,
      "6 ft from floor openings, 29 CFR 1926.250(b)(1)",
      true),
  DECK_EDGE_SETBACK(
      "deckEdgeSetback",
      Measure.LENGTH,
      3.048,
      Weaker.LOWER,
      Flag.SEEN,
      "10 ft from an exterior wall not higher than the stack, 29 CFR 1926.250(b)(1)",
      true),
  STEP_OVER(
      "stepOver",
      Measure.LENGTH,
      0.45,
      Flag.ASSUMPTION,
      "a wall higher than this is walked round, not stepped over"),
  RACK_PIECE_LENGTH(
      "rackPieceLength",
      Measure.LENGTH,
      1.22,
      Weaker.HIGHER,
      Flag.ASSUMPTION,
      "longest piece that stands on end in a rack"),
  RACK_PACKING(
      "rackPacking",
      Measure.RATIO,
      0.60,
      Weaker.HIGHER,
      Flag.ASSUMPTION,
      "share of a rack's floor that pieces on end may cover"),
  LIFT_PER_PERSON(
      "liftPerPerson",
      Measure.MASS,
      23,
      Flag.SEEN,
      "load constant of the revised NIOSH lifting equation, NIOSH 94-110 (rev. 9/2021) p. 7: the most"
          + " under ideal conditions"),
  LOADED_SPEED(
      "loadedSpeed",
      Measure.SPEED,
      0.75,
      Flag.SEEN,
      "middle of 0.5-1.0 m/s, carrying speed in the scope of ISO 11228-1:2021"),
  EMPTY_SPEED(
      "emptySpeed",
      Measure.SPEED,
      1.31,
      Flag.SEEN,
      "usual outdoor walking, Murtagh et al. 2020, doi 10.1007/s40279-020-01351-3"),
  CLIMB_FACTOR(
      "climbFactor",
      Measure.RATIO,
      4.4,
      Flag.ASSUMPTION,
      "metres of level walk that one metre of climb counts for; from stair speeds of 0.4-0.5 m/s"),
  REHANDLE_PIECE(
      "rehandlePiece",
      Measure.DURATION,
      60,
      Flag.ASSUMPTION,
      "person-seconds to move one piece aside and back"),
  RACK_PIECE(
      "rackPiece",
      Measure.DURATION,
      20,
      Flag.ASSUMPTION,
      "person-seconds to stand one piece up in a rack"),
  MACHINE_LIFT(
      "machineLift",
      Measure.DURATION,
      180,
      Flag.ASSUMPTION,
      "seconds to hook or fork, lift, set on bearers and let go"),
  MACHINE_SPEED(
      "machineSpeed", Measure.SPEED, 1.5, Flag.ASSUMPTION, "machine with a load, on site ground"),
  MACHINE_CREW("machineCrew", Measure.COUNT, 2, Flag.COMMON_PRACTICE, "operator and spotter");

  private final String key;
  private final Measure measure;
  private final double defaultSi;
  private final Weaker weaker;
  private final Flag flag;
  private final String source;
  private final boolean published;

  Setting(String key, Measure measure, double defaultSi, Flag flag, String source) {
    this(key, measure, defaultSi, Weaker.NEITHER, flag, source, false);
  }

  Setting(String key, Measure measure, double defaultSi, Weaker weaker, Flag flag, String source) {
    this(key, measure, defaultSi, weaker, flag, source, false);
  }

  Setting(
      String key,
      Measure measure,
      double defaultSi,
      Weaker weaker,
      Flag flag,
      String source,
      boolean published) {
    this.key = key;
    this.measure = measure;
    this.defaultSi = defaultSi;
    this.weaker = weaker;
    this.flag = flag;
    this.source = source;
    this.published = published;
  }

  public String key() {
    return key;
  }

  public Measure measure() {
    return measure;
  }

  public double defaultSi() {
    return defaultSi;
  }

  /** Which way it is changed only with a reason, because hard rules then ask less. */
  public Weaker weaker() {
    return weaker;
  }

  public Flag flag() {
    return flag;
  }

  public String source() {
    return source;
  }

  /** Whether it is a published limit, changed only with a reason. */
  public boolean published() {
    return published;
  }
}
