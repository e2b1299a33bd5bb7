package skidway.survey;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import skidway.job.Bounds;
import skidway.site.Point;

/**
 * Reads the way a line goes: a compass word, a bearing such as {@code N 30 E} or {@code N 30°15'
 * E}, an azimuth, a way on the drawing, or a turn from the line before. Gives degrees
 * counter-clockwise from the drawing's right.
 *
 * @param northDeg where north is, in the same degrees
 */
record Directions(double northDeg) {
  private static final List<String> COMPASS =
      List.of("north", "northeast", "east", "southeast", "south", "southwest", "west", "northwest");

  /** Ways on the drawing, a quarter turn apart. */
  private static final List<String> DRAWN = List.of("right", "up", "left", "down");

  private static final Pattern BEARING =
      Pattern.compile(
          "([NS]) ?(\\d{1,2}(?:\\.\\d{1,9})?) ?(?:[°-] ?(?:(\\d{1,2}(?:\\.\\d{1,9})?) ?'"
              + " ?(?:(\\d{1,2}(?:\\.\\d{1,9})?) ?\")?)?)? ?([EW])\\b",
          Pattern.CASE_INSENSITIVE);

  private static final String ALLOWED =
      "a direction is north, northeast, east ..., a bearing such as N 30 E, azimuth 75, right, up,"
          + " left or down on the drawing, or turn left, turn right, straight after another line";

  /** Whether a word is a direction by itself. */
  static boolean names(String word) {
    return COMPASS.contains(word) || DRAWN.contains(word);
  }

  /** Whether a direction begins here. */
  static boolean begins(LineScanner line) {
    String word = line.peek();
    return COMPASS.contains(word)
        || DRAWN.contains(word)
        || List.of("turn", "straight", "azimuth", "n", "s").contains(word)
        || word.matches("[ns]\\d.*");
  }

  /**
   * The direction that stands here.
   *
   * @param before degrees of the line before, not a number for the first
   */
  double read(LineScanner line, double before) {
    Optional<MatchResult> bearing = line.match(BEARING);
    if (bearing.isPresent()) {
      return northDeg - clockwiseDeg(bearing.get());
    }
    String word = line.peek();
    if (COMPASS.contains(word)) {
      line.take(word);
      return northDeg - 45.0 * COMPASS.indexOf(word);
    }
    if (DRAWN.contains(word)) {
      line.take(word);
      return 90.0 * DRAWN.indexOf(word);
    }
    if (line.take("azimuth")) {
      return northDeg - line.quantity(Bounds.DIRECTION).si();
    }
    if (word.equals("turn") || word.equals("straight")) {
      return turned(line, before);
    }
    throw line.refuse(line.here(), line.foundHere() + " as a direction", ALLOWED, "correct it");
  }

  /** A step of a length that way. */
  Point step(LineScanner line, double directionDeg) {
    return Point.unit(directionDeg).times(line.quantity(Bounds.DISTANCE).si());
  }

  private static double turned(LineScanner line, double before) {
    if (Double.isNaN(before)) {
      throw line.refuse(
          line.here(),
          line.foundHere() + " without a line before",
          "the first line says its direction outright",
          "write north, east, N 30 E or the like");
    }
    if (line.take("straight")) {
      return before;
    }
    line.take("turn");
    int side = line.oneOf("a turn", List.of("left", "right"));
    double byDeg = 90;
    if (line.take("by")) {
      byDeg = line.quantity(Bounds.DIRECTION).si();
    }
    return side == 0 ? before + byDeg : before - byDeg;
  }

  private static double clockwiseDeg(MatchResult m) {
    double offDeg = figure(m, 2) + figure(m, 3) / 60 + figure(m, 4) / 3600;
    boolean north = m.group(1).equalsIgnoreCase("n");
    boolean east = m.group(5).equalsIgnoreCase("e");
    double fromNorth = north ? offDeg : 180 - offDeg;
    return east ? fromNorth : -fromNorth;
  }

  private static double figure(MatchResult m, int group) {
    return m.group(group) == null ? 0 : Double.parseDouble(m.group(group));
  }
}
