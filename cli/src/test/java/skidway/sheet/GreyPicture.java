package skidway.sheet;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Draws the areas and lines of a small drawing in grey, as a black-and-white printer would. */
final class GreyPicture {
  private static final double DOTS_PER_MM = 12;
  private static final Pattern STEP = Pattern.compile("([ML])([-\\d.]+),([-\\d.]+)");

  private GreyPicture() {}

  /** The drawing without its letters: numbers beside a colour are looked at elsewhere. */
  static BufferedImage of(Document drawing, double widthMm, double heightMm) {
    BufferedImage image =
        new BufferedImage(
            (int) (widthMm * DOTS_PER_MM),
            (int) (heightMm * DOTS_PER_MM),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    g.scale(DOTS_PER_MM, DOTS_PER_MM);
    for (Element element : SvgText.elements(drawing, "*")) {
      Shape shape = shape(element);
      if (shape != null) {
        paint(g, shape, element);
      }
    }
    g.dispose();
    return image;
  }

  private static void paint(Graphics2D g, Shape shape, Element element) {
    if (element.getAttribute("fill").startsWith("#")) {
      g.setColor(grey(element.getAttribute("fill")));
      g.fill(shape);
    }
    if (element.getAttribute("stroke").startsWith("#")) {
      g.setColor(grey(element.getAttribute("stroke")));
      float width = Float.parseFloat(element.getAttribute("stroke-width"));
      String[] words = element.getAttribute("stroke-dasharray").split(" ", -1);
      float[] dashes = new float[words[0].isEmpty() ? 0 : words.length];
      for (int i = 0; i < dashes.length; i++) {
        dashes[i] = Float.parseFloat(words[i]);
      }
      boolean round = element.getAttribute("stroke-linecap").equals("round");
      int cap = round ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
      g.setStroke(
          dashes.length == 0
              ? new BasicStroke(width, cap, BasicStroke.JOIN_MITER)
              : new BasicStroke(width, cap, BasicStroke.JOIN_MITER, 4, dashes, 0));
      g.draw(shape);
    }
  }

  /** The grey that is as light as a colour, by the luminance of {@link Contrast}. */
  private static Color grey(String colour) {
    double light = Contrast.luminance(colour);
    double level = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    return new Color((float) level, (float) level, (float) level);
  }

  private static Shape shape(Element e) {
    return switch (e.getTagName()) {
      case "rect" ->
          new Rectangle2D.Double(at(e, "x"), at(e, "y"), at(e, "width"), at(e, "height"));
      case "circle" ->
          new Ellipse2D.Double(
              at(e, "cx") - at(e, "r"), at(e, "cy") - at(e, "r"), 2 * at(e, "r"), 2 * at(e, "r"));
      case "polygon" -> through(e.getAttribute("points"), true);
      case "polyline" -> through(e.getAttribute("points"), false);
      case "line" ->
          through(
              e.getAttribute("x1")
                  + ","
                  + e.getAttribute("y1")
                  + " "
                  + e.getAttribute("x2")
                  + ","
                  + e.getAttribute("y2"),
              false);
      case "path" -> path(e.getAttribute("d"));
      default -> null;
    };
  }

  private static Shape through(String points, boolean closed) {
    Path2D path = (Path2D) path("M" + points.replace(" ", "L"));
    if (closed) {
      path.closePath();
    }
    return path;
  }

  private static Shape path(String d) {
    Path2D path = new Path2D.Double();
    Matcher steps = STEP.matcher(d);
    while (steps.find()) {
      double x = Double.parseDouble(steps.group(2));
      double y = Double.parseDouble(steps.group(3));
      if (steps.group(1).equals("M")) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    return path;
  }

  private static double at(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }
}
