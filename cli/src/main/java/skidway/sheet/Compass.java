package skidway.sheet;

import skidway.site.Point;

/** Names directions on site by the eight points of the compass. */
final class Compass {
  private static final String[] POINTS = {
    "north", "north-west", "west", "south-west", "south", "south-east", "east", "north-east"
  };

  private Compass() {}

  /**
   * Where a direction points to.
   *
   * @param northDeg direction of north, degrees counter-clockwise from the x axis
   */
  static String name(Point direction, double northDeg) {
    double degrees = Math.toDegrees(Math.atan2(direction.y(), direction.x())) - northDeg;
    int eighth = (int) Math.round(degrees / 45);
    return POINTS[Math.floorMod(eighth, POINTS.length)];
  }
}
