package skidway.job;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Outline;
import skidway.site.Point;

/** Reads points, lines and outlines out of a field. After a problem they are a stand-in. */
final class Points {
  private static final Point STAND_IN = new Point(0, 0);
  private static final String A_POINT = "a point is a list of two lengths, [x, y]";

  private Points() {}

  static Point point(Fields fields, String name) {
    return fields.node(name, A_POINT).map(node -> point(fields, node)).orElse(STAND_IN);
  }

  static List<Point> line(Fields fields, String name) {
    return points(fields, name, 2);
  }

  static Outline outline(Fields fields, String name) {
    List<Point> corners = points(fields, name, 3);
    return corners.size() < 3
        ? new Outline(List.of(STAND_IN, STAND_IN, STAND_IN))
        : new Outline(corners);
  }

  private static List<Point> points(Fields fields, String name, int least) {
    List<Point> points = new ArrayList<>();
    for (LocatedNode node : fields.items(name, least, FileBounds.MOST_CORNERS)) {
      points.add(point(fields, node));
    }
    return points;
  }

  private static Point point(Fields fields, LocatedNode node) {
    if (node instanceof LocatedNode.Items pair && pair.nodes().size() == 2) {
      double x = fields.quantity(pair.nodes().get(0), "x", Bounds.COORDINATE.range());
      double y = fields.quantity(pair.nodes().get(1), "y", Bounds.COORDINATE.range());
      return Double.isFinite(x) && Double.isFinite(y) ? new Point(x, y) : STAND_IN;
    }
    fields.report(node.place(), node.words() + " as a point", A_POINT, "write it like that");
    return STAND_IN;
  }
}
