package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import skidway.site.Deck;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Wall;

/**
 * Finds the corners of a site that tapes can be pulled from: those of its decks, or without a deck
 * those of its walls; and where walls that stand already meet, on their inside too.
 */
final class ReferenceCorners {
  /** Corners as near to each other as this are one. */
  private static final double SAME_M = 0.1;

  /** A wall that ends as near to a deck's corner as this meets it there. */
  static final double MEETS_M = 0.6;

  /** Sine of the least bend that people see as a corner. */
  private static final double LEAST_BEND = 0.2;

  private final Site site;
  private final List<Reference> found = new ArrayList<>();

  private ReferenceCorners(Site site) {
    this.site = site;
  }

  static List<Reference> of(Site site, TapeSight sight) {
    ReferenceCorners corners = new ReferenceCorners(site);
    if (site.decks().isEmpty()) {
      site.walls().forEach(corners::wall);
    } else {
      site.decks().forEach(corners::deck);
    }
    sight.standing().forEach(corners::inside);
    return List.copyOf(corners.found);
  }

  private void deck(Deck deck) {
    List<Point> all = deck.outline().corners();
    for (int i = 0; i < all.size(); i++) {
      Point at = all.get(i);
      Point in = at.minus(all.get((i + all.size() - 1) % all.size()));
      Point out = all.get((i + 1) % all.size()).minus(at);
      if (bend(in, out) >= LEAST_BEND) {
        add(at, "corner of " + deck.id() + meeting(at, all));
      }
    }
  }

  private String meeting(Point at, List<Point> outline) {
    List<String> walls =
        site.walls().stream()
            .filter(w -> Math.min(w.start().distanceTo(at), w.end().distanceTo(at)) < MEETS_M)
            .map(Wall::id)
            .toList();
    if (walls.isEmpty()) {
      Point sum = outline.stream().reduce(new Point(0, 0), Point::plus);
      Point fromMiddle = at.minus(sum.times(1.0 / outline.size()));
      return ", to the " + Compass.name(fromMiddle, site.northDeg());
    }
    return walls.size() == 1
        ? " at the end of " + walls.get(0)
        : " where " + walls.stream().collect(Collectors.joining(" and ")) + " meet";
  }

  /** The ends of a wall's outer face, or where that meets the next wall's. */
  private void wall(Wall wall) {
    for (Point end : List.of(wall.start(), wall.end())) {
      Point face = end.minus(wall.inward().times(wall.thicknessM() / 2));
      Optional<Wall> other = meeting(wall, end);
      String start = end.equals(wall.start()) ? "left" : "right";
      String free = "outer face of " + wall.id() + ", " + start + " end seen from outside";
      add(
          other.map(w -> crossing(wall, w, -1)).orElse(face),
          other
              .map(w -> "outer corner where " + wall.id() + " and " + w.id() + " meet")
              .orElse(free));
    }
  }

  /**
   * Where the inner face of a standing wall meets the next wall's: its outside hides the inside.
   */
  private void inside(Wall wall) {
    meeting(wall, wall.end())
        .ifPresent(
            w ->
                add(
                    crossing(wall, w, 1),
                    "inner corner where " + wall.id() + " and " + w.id() + " meet"));
  }

  /** The wall that goes on round a corner from the end of another. */
  private Optional<Wall> meeting(Wall wall, Point end) {
    return site.walls().stream()
        .filter(w -> bend(w.along(), wall.along()) >= LEAST_BEND)
        .filter(w -> Math.min(w.start().distanceTo(end), w.end().distanceTo(end)) < SAME_M)
        .findFirst();
  }

  /**
   * Where faces of two walls meet.
   *
   * @param side 1 for the inner faces, -1 for the outer ones
   */
  private static Point crossing(Wall a, Wall b, int side) {
    Point fromA = a.start().plus(a.inward().times(side * a.thicknessM() / 2));
    Point fromB = b.start().plus(b.inward().times(side * b.thicknessM() / 2));
    double along = fromB.minus(fromA).cross(b.along()) / a.along().cross(b.along());
    return fromA.plus(a.along().times(along));
  }

  private static double bend(Point a, Point b) {
    double lengths = a.length() * b.length();
    return lengths > 0 ? Math.abs(a.cross(b)) / lengths : 0;
  }

  private void add(Point at, String where) {
    if (found.stream().noneMatch(r -> r.at().distanceTo(at) < SAME_M)) {
      found.add(new Reference(Reference.letters(found.size()), at, where, false));
    }
  }
}
