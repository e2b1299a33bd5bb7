package skidway.sheet;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Finds out which filled shape of a finished drawing lies right under a point of a text. */
final class DrawnGround {
  /** A text on what was drawn before it. */
  record TextOn(String text, String ink, double sizeMm, boolean bold, List<String> grounds) {}

  private record Filled(Shape shape, String colour) {}

  private static final Pattern TURN =
      Pattern.compile("(rotate|translate)\\(([-\\d.]+) ([-\\d.]+)(?: ([-\\d.]+))?\\)");
  private static final double SOLID = 0.7;

  private DrawnGround() {}

  /** Every text with the colours under its middle and near its four corners. */
  static List<TextOn> texts(Document drawing) {
    List<Filled> below = new ArrayList<>();
    below.add(new Filled(new Rectangle2D.Double(-1e6, -1e6, 2e6, 2e6), "#ffffff"));
    List<SvgText> boxes = SvgText.all(drawing);
    List<TextOn> all = new ArrayList<>();
    for (Element element : SvgText.elements(drawing, "*")) {
      if (element.getTagName().equals("text")) {
        Box box = boxes.get(all.size()).box();
        double towards = turned(element) ? 0.6 : 0.1;
        List<PagePoint> points = new ArrayList<>();
        box.corners().forEach(corner -> points.add(corner.towards(box.centre(), towards)));
        points.add(box.centre());
        all.add(
            new TextOn(
                element.getTextContent(),
                element.getAttribute("fill"),
                number(element, "font-size"),
                element.getAttribute("font-weight").equals("700"),
                points.stream().map(p -> top(below, p)).distinct().toList()));
      } else {
        Shape shape = shape(element);
        String fill = element.getAttribute("fill");
        String opacity = element.getAttribute("fill-opacity");
        boolean solid = opacity.isEmpty() || Double.parseDouble(opacity) >= SOLID;
        if (shape != null && fill.startsWith("#") && solid) {
          below.add(new Filled(placed(shape, element), fill));
        }
      }
    }
    return all;
  }

  /** The upright box round a turned text has corners far from it. */
  private static boolean turned(Element element) {
    for (Node up = element; up instanceof Element e; up = up.getParentNode()) {
      if (!e.getAttribute("transform").isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private static String top(List<Filled> below, PagePoint point) {
    for (int i = below.size() - 1; ; i--) {
      if (below.get(i).shape().contains(point.x(), point.y())) {
        return below.get(i).colour();
      }
    }
  }

  private static Shape shape(Element e) {
    return switch (e.getTagName()) {
      case "rect" -> window(e);
      case "circle" -> {
        double r = number(e, "r");
        yield new Ellipse2D.Double(number(e, "cx") - r, number(e, "cy") - r, 2 * r, 2 * r);
      }
      case "polygon" -> polygon(e.getAttribute("points"));
      default -> null;
    };
  }

  private static Rectangle2D window(Element e) {
    return new Rectangle2D.Double(
        number(e, "x"), number(e, "y"), number(e, "width"), number(e, "height"));
  }

  private static Shape polygon(String points) {
    Path2D path = new Path2D.Double();
    for (String point : points.split(" ", -1)) {
      String[] xy = point.split(",", -1);
      double x = Double.parseDouble(xy[0]);
      double y = Double.parseDouble(xy[1]);
      if (path.getCurrentPoint() == null) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    path.closePath();
    return path;
  }

  private static Shape placed(Shape shape, Element element) {
    Shape out = shape;
    for (Node up = element; up instanceof Element e; up = up.getParentNode()) {
      AffineTransform turn = new AffineTransform();
      Matcher words = TURN.matcher(e.getAttribute("transform"));
      while (words.find()) {
        double a = Double.parseDouble(words.group(2));
        double b = Double.parseDouble(words.group(3));
        if (words.group(1).equals("translate")) {
          turn.translate(a, b);
        } else {
          turn.rotate(Math.toRadians(a), b, Double.parseDouble(words.group(4)));
        }
      }
      out = turn.createTransformedShape(out);
      if (e.getTagName().equals("svg") && !e.getAttribute("overflow").isEmpty()) {
        Area seen = new Area(out);
        seen.intersect(new Area(window(e)));
        out = seen;
      }
    }
    return out;
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }
}
