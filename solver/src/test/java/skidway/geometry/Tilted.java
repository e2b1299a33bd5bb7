package skidway.geometry;

import java.util.List;
import skidway.site.Deck;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Starter;
import skidway.site.Wall;

/** A house of 10 by 8 m turned about the origin, its walls flush with the edge of its deck. */
final class Tilted {
  private Tilted() {}

  static Site house(double degrees) {
    Point u = Point.unit(degrees);
    Point v = u.turnedLeft();
    Point a = at(u, v, -5, -4);
    Point b = at(u, v, 5, -4);
    Point c = at(u, v, 5, 4);
    Point d = at(u, v, -5, 4);
    Outline floor =
        new Outline(
            List.of(
                at(u, v, -5.1, -4.1),
                at(u, v, 5.1, -4.1),
                at(u, v, 5.1, 4.1),
                at(u, v, -5.1, 4.1)));
    List<Wall> walls =
        List.of(wall("W1", a, b), wall("W2", b, c), wall("W3", c, d), wall("W4", d, a));
    Deck deck = new Deck("deck", floor, 0, 2.4, List.of(), List.of());
    return Places.site(Outline.box(-20, -20, 20, 20), walls, List.of(deck), List.of());
  }

  private static Point at(Point u, Point v, double x, double y) {
    return u.times(x).plus(v.times(y));
  }

  private static Wall wall(String id, Point from, Point to) {
    return new Wall(id, from, to, 0.2, Starter.FULL, List.of());
  }
}
