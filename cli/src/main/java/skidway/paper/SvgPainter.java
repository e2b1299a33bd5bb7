package skidway.paper;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.io.IOException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Paints the elements of a drawing one over the other. */
final class SvgPainter {
  private final PDPageContentStream out;
  private final Letters letters;

  SvgPainter(PDPageContentStream out, Letters letters) {
    this.out = out;
    this.letters = letters;
  }

  void children(Element element, SvgLook look) throws IOException {
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child && !child.getTagName().equals("title")) {
        paint(child, look.with(child));
      }
    }
  }

  private void paint(Element element, SvgLook look) throws IOException {
    out.saveGraphicsState();
    if (element.hasAttribute("transform")) {
      AffineTransform turn = SvgTurn.of(element.getAttribute("transform"));
      out.transform(new Matrix(turn));
    }
    switch (element.getTagName()) {
      case "g" -> children(element, look);
      case "svg" -> window(element, look);
      case "text" ->
          new SvgText(out, letters, look).paint(element, at(element, "x"), at(element, "y"));
      case "line", "polyline" -> paint(outline(element), look, false);
      default -> paint(outline(element), look, true);
    }
    out.restoreGraphicsState();
  }

  /** A part of a drawing with nothing of it beyond its edge; its units are those around it. */
  private void window(Element element, SvgLook look) throws IOException {
    double x = at(element, "x");
    double y = at(element, "y");
    double width = at(element, "width");
    double height = at(element, "height");
    String own =
        Stream.of("x", "y", "width", "height")
            .map(element::getAttribute)
            .collect(Collectors.joining(" "));
    if (!element.getAttribute(SvgSize.VIEW).equals(own)) {
      throw new IllegalArgumentException(
          "A drawing within a drawing keeps its units: its viewBox must be \""
              + own
              + "\", found \""
              + element.getAttribute(SvgSize.VIEW)
              + "\".");
    }
    out.addRect((float) x, (float) y, (float) width, (float) height);
    out.clip();
    children(element, look);
  }

  private static Shape outline(Element e) {
    return switch (e.getTagName()) {
      case "path" -> SvgPath.of(e.getAttribute("d"));
      case "polygon" -> SvgPath.through(e.getAttribute("points"), true);
      case "polyline" -> SvgPath.through(e.getAttribute("points"), false);
      case "line" -> new Line2D.Double(at(e, "x1"), at(e, "y1"), at(e, "x2"), at(e, "y2"));
      case "circle" -> {
        double r = at(e, "r");
        yield new Ellipse2D.Double(at(e, "cx") - r, at(e, "cy") - r, 2 * r, 2 * r);
      }
      case "rect" -> {
        double round = 2 * (e.hasAttribute("rx") ? at(e, "rx") : at(e, "ry"));
        double w = at(e, "width");
        double h = at(e, "height");
        yield round > 0
            ? new RoundRectangle2D.Double(at(e, "x"), at(e, "y"), w, h, round, round)
            : new Rectangle2D.Double(at(e, "x"), at(e, "y"), w, h);
      }
      default ->
          throw new IllegalArgumentException("Drawings on paper have no " + e.getTagName() + ".");
    };
  }

  private static double at(Element element, String name) {
    String value = element.getAttribute(name);
    return value.isEmpty() ? 0 : Double.parseDouble(value);
  }

  private void paint(Shape shape, SvgLook look, boolean area) throws IOException {
    boolean fill = look.paints("fill", area ? "#000" : "none");
    boolean stroke = look.paints("stroke", "none");
    if (fill) {
      out.setNonStrokingColor(look.colour("fill"));
    }
    if (stroke) {
      pen(look);
    }
    opacity(look);
    boolean strokeFirst = look.word("paint-order", "").startsWith("stroke");
    if (strokeFirst && stroke) {
      trace(shape);
      out.stroke();
      stroke = false;
    }
    if (!fill && !stroke) {
      return;
    }
    trace(shape);
    boolean evenOdd = look.word("fill-rule", "nonzero").equals("evenodd");
    if (fill && stroke && evenOdd) {
      out.fillAndStrokeEvenOdd();
    } else if (fill && stroke) {
      out.fillAndStroke();
    } else if (fill && evenOdd) {
      out.fillEvenOdd();
    } else if (fill) {
      out.fill();
    } else {
      out.stroke();
    }
  }

  private void pen(SvgLook look) throws IOException {
    out.setStrokingColor(look.colour("stroke"));
    out.setLineWidth((float) look.number("stroke-width", 1));
    out.setLineCapStyle(
        switch (look.word("stroke-linecap", "butt")) {
          case "round" -> 1;
          case "square" -> 2;
          default -> 0;
        });
    out.setLineJoinStyle(
        switch (look.word("stroke-linejoin", "miter")) {
          case "round" -> 1;
          case "bevel" -> 2;
          default -> 0;
        });
    out.setMiterLimit(4);
    if (look.dashes().length > 0) {
      out.setLineDashPattern(look.dashes(), look.dashStart());
    }
  }

  private void opacity(SvgLook look) throws IOException {
    double fill = look.number("fill-opacity", 1);
    double stroke = look.number("stroke-opacity", 1);
    if (fill < 1 || stroke < 1) {
      PDExtendedGraphicsState state = new PDExtendedGraphicsState();
      state.setNonStrokingAlphaConstant((float) fill);
      state.setStrokingAlphaConstant((float) stroke);
      out.setGraphicsStateParameters(state);
    }
  }

  private void trace(Shape shape) throws IOException {
    // PDF has cubic curves only.
    float[] p = new float[6];
    float x = 0;
    float y = 0;
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      switch (i.currentSegment(p)) {
        case PathIterator.SEG_MOVETO -> {
          out.moveTo(p[0], p[1]);
          x = p[0];
          y = p[1];
        }
        case PathIterator.SEG_LINETO -> {
          out.lineTo(p[0], p[1]);
          x = p[0];
          y = p[1];
        }
        case PathIterator.SEG_QUADTO -> {
          out.curveTo(
              x + (p[0] - x) * 2 / 3,
              y + (p[1] - y) * 2 / 3,
              p[2] + (p[0] - p[2]) * 2 / 3,
              p[3] + (p[1] - p[3]) * 2 / 3,
              p[2],
              p[3]);
          x = p[2];
          y = p[3];
        }
        case PathIterator.SEG_CUBICTO -> {
          out.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
          x = p[4];
          y = p[5];
        }
        default -> out.closePath();
      }
    }
  }
}
