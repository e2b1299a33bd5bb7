package skidway.audit.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import skidway.audit.plane.Rectangle;
import skidway.audit.plane.Segment;
import skidway.site.Footprint;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Wall;
import skidway.site.WallOpening;

/**
 * Knows what risen walls close to people: their thickness along their length, less the doors whose
 * sill can be stepped over.
 */
final class ClosedWalls {
  /** What a way may graze or a point lie in, to count as touching only. */
  private static final double TOUCH_M = 0.001;

  private final List<Footprint> parts;
  private final List<Rectangle> drawn;

  private ClosedWalls(List<Footprint> parts) {
    this.parts = List.copyOf(parts);
    drawn = parts.stream().map(Rectangle::of).toList();
  }

  static ClosedWalls of(Site site, double stepOverM, Predicate<Wall> risen) {
    return new ClosedWalls(
        site.walls().stream()
            .filter(wall -> wall.lengthM() > 0 && risen.test(wall))
            .flatMap(wall -> parts(wall, stepOverM).stream())
            .toList());
  }

  List<Footprint> parts() {
    return parts;
  }

  /** Whether a straight way leads through one of them. */
  boolean cut(Point from, Point to) {
    Segment way = new Segment(from, to);
    return drawn.stream().anyMatch(part -> part.depthOf(way) > TOUCH_M);
  }

  /** Whether a point lies in one of them. */
  boolean hold(Point p) {
    return cut(p, p);
  }

  private static List<Footprint> parts(Wall wall, double stepOverM) {
    List<Footprint> parts = new ArrayList<>();
    List<WallOpening> doors =
        wall.openings().stream()
            .filter(opening -> opening.door() && opening.sillM() <= stepOverM)
            .sorted(Comparator.comparingDouble(WallOpening::fromM))
            .toList();
    double from = 0;
    for (WallOpening door : doors) {
      addPart(parts, wall, from, door.fromM());
      from = Math.max(from, door.toM());
    }
    addPart(parts, wall, from, wall.lengthM());
    return parts;
  }

  private static void addPart(List<Footprint> parts, Wall wall, double from, double to) {
    if (to > from) {
      parts.add(
          new Footprint(
              wall.at((from + to) / 2),
              wall.footprint().headingDeg(),
              to - from,
              wall.thicknessM()));
    }
  }
}
