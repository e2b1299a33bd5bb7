package skidway.job;

import skidway.units.Figures;
import skidway.units.Measure;

/**
 * What sizes are believed: wide enough for any building site, narrow enough to catch a wrong unit
 * (feet for inches, millimetres for metres). All limits are assumptions and stand here only; SI.
 */
public enum Bounds {
  COORDINATE("a coordinate", Measure.LENGTH, -2000, 2000),
  DISTANCE("a distance on the site", Measure.LENGTH, 0, 2000),
  DIRECTION("a direction", Measure.ANGLE, -360, 360),
  COURSE_HEIGHT("the height of a course", Measure.LENGTH, 0.02, 1),
  WALL_THICKNESS("the thickness of a wall", Measure.LENGTH, 0.02, 1.5),
  WALL_BUILT("the height of a wall that stands already", Measure.LENGTH, 0, 20),
  OPENING_FROM("an opening's distance from the wall's start", Measure.LENGTH, 0, 200),
  OPENING_WIDTH("the width of an opening", Measure.LENGTH, 0.1, 20),
  OPENING_HEIGHT("a height in a wall", Measure.LENGTH, 0, 20),
  DECK_HEIGHT("the height of a deck", Measure.LENGTH, 0, 15),
  ALLOWED_LOAD("an allowed load", Measure.PRESSURE, 0.2, 1000),
  LIVE_LOAD("a floor's live load", Measure.PRESSURE, 0.2, 50),
  DEAD_LOAD("a floor's own weight", Measure.PRESSURE, 0, 20),
  JOIST_SPACING("the spacing of joists", Measure.LENGTH, 0.1, 2),
  ZONE_TOTAL("the total of a deck or yard", Measure.MASS, 10, 10_000_000),
  SLOPE("a slope, fall over distance,", Measure.RATIO, 0, 1),
  STEPS_WIDTH("the width of steps", Measure.LENGTH, 0.3, 20),
  LANE_WIDTH("the width of a lane", Measure.LENGTH, 0.3, 30),
  MARGIN("a margin", Measure.LENGTH, 0, 50),
  DEPTH("the depth of an excavation", Measure.LENGTH, 0.1, 30),
  VOLTAGE("the voltage of an overhead line", Measure.VOLTAGE, 100, 1_500_000),
  LINE_CLEARANCE("the clearance of an overhead line", Measure.LENGTH, 0.5, 100),
  TRUCK_LENGTH("the length of a truck", Measure.LENGTH, 1, 40),
  TRUCK_WIDTH("the width of a truck", Measure.LENGTH, 1, 6),
  REACH("a reach", Measure.LENGTH, 0.2, 150),
  CAPACITY("a capacity", Measure.MASS, 1, 500_000),
  LOAD_CENTRE("a load centre", Measure.LENGTH, 0.1, 3),
  SLING_ANGLE("the angle of a sling from the horizontal", Measure.ANGLE, 5, 90),
  SLING_LEG("what one sling is rated for", Measure.MASS, 10, 100_000),
  MACHINE_WIDTH("the width of a machine", Measure.LENGTH, 0.3, 6),
  RIGGING("the mass of rigging", Measure.MASS, 0, 20_000),
  // A loose timber is a bundle, and its spot may be no larger.
  SPOT_LENGTH("the length of a spot", Measure.LENGTH, 0.02, 30),
  SPOT_WIDTH("the width of a spot", Measure.LENGTH, 0.0127, 15),
  STRIP("the depth of an open strip", Measure.LENGTH, 0.1, 10),
  MASS_LIMIT("a spot's mass limit", Measure.MASS, 1, 500_000),
  PIECE_LENGTH("the length of a piece", Measure.LENGTH, 0.02, 25),
  SECTION("the width or height of a piece", Measure.LENGTH, 0.0127, 1.5),
  FILL("the fill of a piece", Measure.RATIO, 0.1, 1),
  FROM_LEFT("a piece's distance from the wall's left end", Measure.LENGTH, -5, 200),
  PIECE_MASS("the mass of a piece", Measure.MASS, 0.01, 10_000),
  BUNDLE_LENGTH("the length of a bundle", Measure.LENGTH, 0.02, 25),
  BUNDLE_SIDE("the width or height of a bundle", Measure.LENGTH, 0.0127, 4),
  BUNDLE_MASS("the mass of a bundle", Measure.MASS, 0.1, 50_000),
  GRAVITY("a wood's specific gravity", Measure.RATIO, 0.1, 1.3),
  SPREAD("a wood's spread", Measure.RATIO, 0, 0.5),
  COURSE("a course", Measure.COUNT, 1, 1000),
  POSITION("a position", Measure.COUNT, 1, 10_000),
  LAYER("a layer", Measure.COUNT, 1, 1000),
  OFF_ORDER("an off-order", Measure.COUNT, 1, 100_000);

  /**
   * How far timbers may pass a wall's end, each side: they lap at the corners (common practice).
   */
  static final double CORNER_LAP_M = 1.0;

  private final Range range;

  Bounds(String words, Measure measure, double least, double most) {
    this.range = new Range(words, measure, least, most);
  }

  public Measure measure() {
    return range.measure();
  }

  public Range range() {
    return range;
  }

  /** A named range of believed values. */
  public record Range(String words, Measure measure, double least, double most) {
    boolean holds(double si) {
      return si >= least && si <= most;
    }

    String allowed(Figures figures) {
      return words + " is " + figures.of(measure, least) + " to " + figures.of(measure, most);
    }
  }
}
