package skidway.site;

import java.util.List;

/**
 * A straight wall. Walls are listed counter-clockwise seen from above, so the inside is on the left
 * of the way from start to end, and the start is the wall's left end seen from outside.
 *
 * @param start left end of the wall's centre line, seen from outside
 * @param builtM how high it stands already when the plan begins
 */
public record Wall(
    String id,
    Point start,
    Point end,
    double thicknessM,
    Starter starter,
    List<WallOpening> openings,
    double builtM) {
  public Wall {
    openings = List.copyOf(openings);
  }

  /** A wall that is still to be built. */
  public Wall(
      String id,
      Point start,
      Point end,
      double thicknessM,
      Starter starter,
      List<WallOpening> openings) {
    this(id, start, end, thicknessM, starter, openings, 0);
  }

  /** The same wall, standing so high already. */
  public Wall standing(double heightM) {
    return new Wall(id, start, end, thicknessM, starter, openings, heightM);
  }

  public double lengthM() {
    return start.distanceTo(end);
  }

  public Point along() {
    return end.minus(start).times(1 / lengthM());
  }

  /** Unit vector towards the inside of the building. */
  public Point inward() {
    return along().turnedLeft();
  }

  /** The point of the centre line at a distance from the start. */
  public Point at(double fromStartM) {
    return start.plus(along().times(fromStartM));
  }

  /** What the wall covers, corner posts and log ends not counted. */
  public Footprint footprint() {
    Point way = end.minus(start);
    return new Footprint(
        at(lengthM() / 2), Math.toDegrees(Math.atan2(way.y(), way.x())), lengthM(), thicknessM);
  }
}
