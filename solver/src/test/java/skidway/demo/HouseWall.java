package skidway.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import skidway.site.Point;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.site.WallOpening;

/** A straight wall along one of the site's axes, seen from outside from its left end. */
record HouseWall(
    String id, int x0, int y0, int x1, int y1, Starter starter, List<Opening> openings) {

  /** A door or window: left edge from the wall's start, heights above the wall's foot. */
  record Opening(String id, boolean door, int from, int width, int sill, int head) {
    int to() {
      return from + width;
    }
  }

  /** A stretch of wall, from the left. */
  record Span(int from, int to) {}

  HouseWall {
    openings = openings.stream().sorted(Comparator.comparingInt(Opening::from)).toList();
  }

  static HouseWall wall(
      String id, int x0, int y0, int x1, int y1, Starter starter, Opening... openings) {
    return new HouseWall(id, x0, y0, x1, y1, starter, List.of(openings));
  }

  int length() {
    return Math.abs(x1 - x0) + Math.abs(y1 - y0);
  }

  /** What is left of the wall between two heights, openings taken out. */
  List<Span> solid(int bottom, int top) {
    List<Span> spans = new ArrayList<>();
    int from = 0;
    for (Opening opening : openings) {
      if (opening.sill() < top && opening.head() > bottom) {
        spans.add(new Span(from, opening.from()));
        from = opening.to();
      }
    }
    spans.add(new Span(from, length()));
    return spans;
  }

  /** The wall as Skidway knows it. */
  Wall toWall(House house) {
    Ruler ruler = house.ruler();
    return new Wall(
        id,
        new Point(ruler.metres(x0), ruler.metres(y0)),
        new Point(ruler.metres(x1), ruler.metres(y1)),
        ruler.metres(house.thickness()),
        starter,
        openings.stream()
            .map(
                o ->
                    new WallOpening(
                        o.id(),
                        ruler.metres(o.from()),
                        ruler.metres(o.width()),
                        ruler.metres(o.sill()),
                        ruler.metres(o.head()),
                        o.door()))
            .toList());
  }
}
