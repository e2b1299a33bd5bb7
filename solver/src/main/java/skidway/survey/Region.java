package skidway.survey;

import java.util.List;
import skidway.job.LocatedNode;
import skidway.site.Point;

/**
 * Reads the outline of something on the ground: a strip beside a wall, a strip from point to point,
 * or a walk round it.
 */
record Region(Clauses said, List<Point> corners) {
  /** What a region is told with, besides what else is said of the thing. */
  static Grammar grammar(String kind, skidway.job.Bounds wide) {
    return new Grammar(kind)
        .beside()
        .length("long", skidway.job.Bounds.DISTANCE)
        .length("wide", wide);
  }

  static Region read(LineScanner line, Grammar grammar, Setup setup) {
    Walked walked = new Walked(line, setup);
    if (line.take("outline")) {
      List<Point> corners = walked.outline();
      return new Region(grammar.read(line), corners);
    }
    if (line.take("from")) {
      List<Point> ends = walked.points();
      Clauses said = grammar.read(line);
      if (ends.size() > 2) {
        throw said.missing("a strip from one point to one other", "from ... to ... wide 3'");
      }
      return new Region(said, between(ends.get(0), ends.get(1), said));
    }
    Clauses said = grammar.read(line);
    return new Region(said, new Taped(said, line, setup.house()).strip().corners());
  }

  LocatedNode outline(Setup setup) {
    return setup.nodes().points(said.start(), corners);
  }

  private static List<Point> between(Point from, Point to, Clauses said) {
    double wideM = said.needed("wide", "wide 3'").si();
    Point way = to.minus(from);
    if (way.length() < 0.001) {
      throw said.missing("two different ends", "from 3' off W1 middle to 9' off W1 middle");
    }
    Point side = way.turnedLeft().times(wideM / 2 / way.length());
    return List.of(from.minus(side), to.minus(side), to.plus(side), from.plus(side));
  }
}
