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
      "top bundle within reach of hands"),
  HAND_PILE_HEIGHT(
      "handPileHeight",
      Measure.LENGTH,
      4.8768,
      Weaker.HIGHER,
      Flag.SECONDARY,
      Publication.OSHA,
      "16 ft, lumber piled or taken by hand, 29 CFR 1926.250(b)(8)(iv), read in state copies (20 ft"
          + " by machine alone; here people always take the pieces)",
      true),
  WEDGE_HEIGHT(
      "wedgeHeight",
      Measure.LENGTH,
      1.2,
      Weaker.HIGHER,
      Publication.QUEBEC,
      "piles of building lumber above 1.2 m need cross supports or wedges, s. 3.16.3"),
  HEIGHT_TO_WIDTH(
      "heightToWidth",
      Measure.RATIO,
      3,
      Weaker.HIGHER,
      Flag.MEMORY,
      "3 to 1 for free-standing packs of sawn timber; the ratio's text was not found"),
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
  BEARER_WIDTH(
      "bearerWidth",
      Measure.LENGTH,
      0.089,
      Weaker.HIGHER,
      Flag.COMMON_PRACTICE,
      "4x4 dunnage, 3 1/2 in wide"),
  BEARER_SPACING(
      "bearerSpacing",
      Measure.LENGTH,
      1.2192,
      Weaker.HIGHER,
      Flag.COMMON_PRACTICE,
      "4 ft from bearer to bearer at most, so that long timbers do not sag"),
  BEARER_CLOSEST(
      "bearerClosest",
      Measure.LENGTH,
      0.4064,
      Weaker.LOWER,
      Flag.SECONDARY,
      "16 in from bearer to bearer at least; the spacing under hand-stacked lumber in a trade text"),
  BEARER_PROUD(
      "bearerProud",
      Measure.LENGTH,
      0.305,
      Weaker.HIGHER,
      Flag.ASSUMPTION,
      "how far bearers on the ground may stand out beyond the bundle, each side, to spread its load;"
          + " never more than half the gap between stacks"),
  BEARER_REACH(
      "bearerReach",
      Measure.LENGTH,
      0.0,
      Weaker.HIGHER,
      Flag.ASSUMPTION,
      "how far bearers on a deck carry the load beyond the stack's sides; 0 counts the footprint"
          + " alone"),
  GROUND_CLEARANCE(
      "groundClearance",
      Measure.LENGTH,
      0.089,
      Weaker.LOWER,
      Flag.COMMON_PRACTICE,
      "room for air and forks, the height of a 4x4; covered sheds of military lumber yards keep"
          + " 12 in"),
  YARD_SLOPE(
      "yardSlope",
      Measure.RATIO,
      0.05,
      Weaker.HIGHER,
      Flag.ASSUMPTION,
      "steepest ground that stacks stand on, fall over distance"),
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
      Publication.OSHA,
      "28 in exit access, 29 CFR 1910.36(g)(2)"),
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
      Publication.OSHA,
      "6 ft from floor openings, 29 CFR 1926.250(b)(1)"),
  DECK_EDGE_SETBACK(
      "deckEdgeSetback",
      Measure.LENGTH,
      3.048,
      Weaker.LOWER,
      Publication.OSHA,
      "10 ft from an exterior wall not higher than the stack, 29 CFR 1926.250(b)(1)"),
  EXCAVATION_SETBACK(
      "excavationSetback",
      Measure.LENGTH,
      0.6096,
      Weaker.LOWER,
      Publication.OSHA,
      "2 ft from the edge of an excavation, 29 CFR 1926.651(j)(2)"),
  EXCAVATION_DEPTH_SHARE(
      "excavationDepthShare",
      Measure.RATIO,
      1.0,
      Weaker.LOWER,
      Flag.ASSUMPTION,
      "a stack stays back as far as the trench is deep; soil and shoring are a competent person's"
          + " to judge"),
  LINE_TO_50_KV(
      "lineTo50kV",
      Measure.LENGTH,
      3.048,
      Weaker.LOWER,
      Publication.OSHA,
      "10 ft up to 50 kV, 29 CFR 1926.1408 Table A"),
  LINE_TO_200_KV(
      "lineTo200kV",
      Measure.LENGTH,
      4.572,
      Weaker.LOWER,
      Publication.OSHA,
      "15 ft over 50 to 200 kV, 29 CFR 1926.1408 Table A"),
  LINE_TO_350_KV(
      "lineTo350kV",
      Measure.LENGTH,
      6.096,
      Weaker.LOWER,
      Publication.OSHA,
      "20 ft over 200 to 350 kV, 29 CFR 1926.1408 Table A"),
  LINE_TO_500_KV(
      "lineTo500kV",
      Measure.LENGTH,
      7.62,
      Weaker.LOWER,
      Publication.OSHA,
      "25 ft over 350 to 500 kV, 29 CFR 1926.1408 Table A"),
  LINE_TO_750_KV(
      "lineTo750kV",
      Measure.LENGTH,
      10.668,
      Weaker.LOWER,
      Publication.OSHA,
      "35 ft over 500 to 750 kV, 29 CFR 1926.1408 Table A"),
  LINE_TO_1000_KV(
      "lineTo1000kV",
      Measure.LENGTH,
      13.716,
      Weaker.LOWER,
      Publication.OSHA,
      "45 ft over 750 to 1000 kV, 29 CFR 1926.1408 Table A; above it the owner of the line says"),
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
  TRAVEL_CLEARANCE(
      "travelClearance",
      Measure.LENGTH,
      0.9144,
      Weaker.LOWER,
      Flag.SEEN,
      Publication.OSHA_LETTER,
      "lane as wide as machine or load and 3 ft more; recommended, in a letter withdrawn since"),
  TRAVEL_LEAST(
      "travelLeast",
      Measure.LENGTH,
      1.2192,
      Weaker.LOWER,
      Flag.SEEN,
      Publication.OSHA_LETTER,
      "no lane for a machine below 4 ft; recommended, in a letter withdrawn since"),
  SLING_ANGLE(
      "slingAngle",
      Measure.ANGLE,
      30,
      Weaker.LOWER,
      Flag.MEMORY,
      "slings at no less than 30 degrees from the horizontal (recalled from ASME B30.9); 60 is better"),
  LIFT_PER_PERSON(
      "liftPerPerson",
      Measure.MASS,
      23,
      Weaker.HIGHER,
      Flag.SEEN,
      Publication.NIOSH,
      "load constant of the revised lifting equation, p. 7: the most under ideal conditions"),
  TEAM_OF_TWO(
      "teamOfTwo",
      Measure.RATIO,
      0.6667,
      Weaker.HIGHER,
      Flag.SEEN,
      Publication.HSE_L23,
      "two lift two thirds of the sum of what each can lift"),
  TEAM_OF_THREE(
      "teamOfThree",
      Measure.RATIO,
      0.5,
      Weaker.HIGHER,
      Flag.SEEN,
      Publication.HSE_L23,
      "three lift half of the sum; four are taken to do no better"),
  TEAM_MOST(
      "teamMost",
      Measure.COUNT,
      4,
      Weaker.HIGHER,
      Flag.SEEN,
      Publication.HSE_L23,
      "teams of more than four are unlikely to work"),
  ONE_PERSON_LENGTH(
      "onePersonLength",
      Measure.LENGTH,
      2.44,
      Weaker.HIGHER,
      Flag.ASSUMPTION,
      "a longer piece takes two people, whatever it weighs"),
  LIFT_FREQUENCY(
      "liftFrequency",
      Measure.RATIO,
      0.2,
      Weaker.LOWER,
      Flag.ASSUMPTION,
      "lifts a minute over a working day, for the screening by the lifting equation"),
  LOADED_SPEED(
      "loadedSpeed",
      Measure.SPEED,
      0.75,
      Weaker.NEITHER,
      Flag.SEEN,
      Publication.ISO_11228,
      "middle of 0.5-1.0 m/s, carrying speed in its scope"),
  EMPTY_SPEED(
      "emptySpeed",
      Measure.SPEED,
      1.31,
      Weaker.NEITHER,
      Flag.SEEN,
      Publication.MURTAGH,
      "usual outdoor walking, doi 10.1007/s40279-020-01351-3"),
  CLIMB_FACTOR(
      "climbFactor",
      Measure.RATIO,
      4.4,
      Flag.ASSUMPTION,
      "metres of level walk that one metre of climb counts for; from stair speeds of 0.4-0.5 m/s"),
  PICK_TIME(
      "pickTime",
      Measure.DURATION,
      60,
      Flag.ASSUMPTION,
      "person-seconds that a pick costs each carrier where the lifting equation's height factor is"
          + " nil; in proportion between there and knuckle height, where it costs nothing"),
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
  MACHINE_CREW("machineCrew", Measure.COUNT, 2, Flag.COMMON_PRACTICE, "operator and spotter"),
  RETAG(
      "retag",
      Measure.DURATION,
      120,
      Flag.ASSUMPTION,
      "person-seconds to print and change both tags of a bundle that comes to lie elsewhere"),
  LAY_PIECE(
      "layPiece",
      Measure.DURATION,
      20,
      Flag.ASSUMPTION,
      "person-seconds to lay one piece straight in its layer of a pile, or onto a load for the"
          + " machine; as long as standing it up in a rack"),
  PILE_SET_UP(
      "pileSetUp",
      Measure.DURATION,
      60,
      Flag.ASSUMPTION,
      "person-seconds to fetch bearers and stickers for a pile and lay the bearers"),
  STICKER_HEIGHT(
      "stickerHeight",
      Measure.LENGTH,
      0.019,
      Flag.COMMON_PRACTICE,
      "3/4 in laths between the layers of a pile"),
  PILE_WIDTH(
      "pileWidth",
      Measure.LENGTH,
      0.61,
      Flag.ASSUMPTION,
      "2 ft, what a pile by the wall is wide at most, so that its far timbers are within reach"),
  COURSES_AHEAD(
      "coursesAhead",
      Measure.COUNT,
      4,
      Flag.ASSUMPTION,
      "most courses that one wave brings into piles by the walls; beyond them it brings only pieces"
          + " that are dug out by then anyway"),
  MACHINE_TRIPS(
      "machineTrips",
      Measure.COUNT,
      0,
      Flag.ASSUMPTION,
      "most trips of the machine in one wave; none unless the job says that it stays on site"),
  ERECTION_RATE(
      "erectionRate",
      Measure.COUNT,
      40,
      Flag.ASSUMPTION,
      "pieces a crew lays in a day of work, for reckoning dates; a crew that knows its own figure"
          + " says it"),
  COVER_ENDS(
      "coverEnds",
      Measure.LENGTH,
      0.4572,
      Weaker.NEITHER,
      Flag.SEEN,
      Publication.STORAGE_MANUAL,
      "a roof over an open stack goes 12 to 18 in beyond its ends, ch. 5"),
  COVER_SIDES(
      "coverSides",
      Measure.LENGTH,
      0.1524,
      Weaker.NEITHER,
      Flag.SEEN,
      Publication.STORAGE_MANUAL,
      "a roof over an open stack goes some 6 in beyond its sides, ch. 5");

  private final String key;
  private final Measure measure;
  private final double defaultSi;
  private final Weaker weaker;
  private final Flag flag;
  private final Publication publication;
  private final String source;
  private final boolean published;

  /** A number that prices work. */
  Setting(String key, Measure measure, double defaultSi, Flag flag, String source) {
    this(key, measure, defaultSi, Weaker.NEITHER, flag, Publication.NONE, source, false);
  }

  /** A number of a hard rule that nobody published. */
  Setting(String key, Measure measure, double defaultSi, Weaker weaker, Flag flag, String source) {
    this(key, measure, defaultSi, weaker, flag, Publication.NONE, source, false);
  }

  /** A published limit. */
  Setting(
      String key,
      Measure measure,
      double defaultSi,
      Weaker weaker,
      Publication publication,
      String source) {
    this(key, measure, defaultSi, weaker, Flag.SEEN, publication, source, true);
  }

  /** A number from a publication that is no limit there. */
  Setting(
      String key,
      Measure measure,
      double defaultSi,
      Weaker weaker,
      Flag flag,
      Publication publication,
      String source) {
    this(key, measure, defaultSi, weaker, flag, publication, source, false);
  }

  /** A limit as published, wherever it was read. */
  Setting(
      String key,
      Measure measure,
      double defaultSi,
      Weaker weaker,
      Flag flag,
      Publication publication,
      String source,
      boolean published) {
    this.key = key;
    this.measure = measure;
    this.defaultSi = defaultSi;
    this.weaker = weaker;
    this.flag = flag;
    this.publication = publication;
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

  /** Where it was published, with the edition read. */
  public Publication publication() {
    return publication;
  }

  /** Whether it is a published limit, changed only with a reason. */
  public boolean published() {
    return published;
  }
}
