package skidway.sheet;

import java.util.List;
import java.util.StringJoiner;

/**
 * Draws into one SVG whose unit is the millimetre on paper. Looks are written on each element, so
 * that the drawing keeps them wherever it is shown.
 */
final class Drawing {
  private final Markup out;

  /** Draws into an SVG element that is open already. */
  Drawing(Markup out) {
    this.out = out;
  }

  Drawing(Paper paper, String title) {
    this(paper.widthMm(), paper.heightMm(), title);
  }

  Drawing(double widthMm, double heightMm, String title) {
    this(new Markup());
    out.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        "0 0 " + Numbers.of(widthMm) + " " + Numbers.of(heightMm),
        "width",
        Numbers.of(widthMm) + "mm",
        "height",
        Numbers.of(heightMm) + "mm",
        "role",
        "img",
        "font-family",
        "'Helvetica Neue', Helvetica, Arial, 'Liberation Sans', Roboto, sans-serif");
    out.leaf("title", title).line();
  }

  /** Opens a named part of the drawing. */
  Drawing open(String part, Object... attributes) {
    out.open("g", both(new Object[] {"class", part}, attributes));
    return this;
  }

  /** Opens a part of which nothing is seen beyond a box; millimetres stay what they are. */
  Drawing openWindow(String part, Box box) {
    String seen =
        Numbers.of(box.x0())
            + " "
            + Numbers.of(box.y0())
            + " "
            + Numbers.of(box.width())
            + " "
            + Numbers.of(box.height());
    out.open(
        "svg",
        "class",
        part,
        "x",
        box.x0(),
        "y",
        box.y0(),
        "width",
        box.width(),
        "height",
        box.height(),
        "viewBox",
        seen,
        "overflow",
        "hidden");
    return this;
  }

  Drawing close() {
    out.close().line();
    return this;
  }

  Drawing polygon(List<PagePoint> points, Object... attributes) {
    out.empty("polygon", both(new Object[] {"points", list(points)}, attributes));
    return this;
  }

  Drawing polyline(List<PagePoint> points, Object... attributes) {
    Object[] first = {"points", list(points), "fill", "none"};
    out.empty("polyline", both(first, attributes));
    return this;
  }

  Drawing line(PagePoint a, PagePoint b, Object... attributes) {
    Object[] first = {"x1", a.x(), "y1", a.y(), "x2", b.x(), "y2", b.y()};
    out.empty("line", both(first, attributes));
    return this;
  }

  Drawing rect(Box box, Object... attributes) {
    Object[] first = {"x", box.x0(), "y", box.y0(), "width", box.width(), "height", box.height()};
    out.empty("rect", both(first, attributes));
    return this;
  }

  Drawing circle(PagePoint centre, double radius, Object... attributes) {
    Object[] first = {"cx", centre.x(), "cy", centre.y(), "r", radius};
    out.empty("circle", both(first, attributes));
    return this;
  }

  Drawing path(String d, Object... attributes) {
    out.empty("path", both(new Object[] {"d", d}, attributes));
    return this;
  }

  /** Text whose capital letters are centred on the height of a point. */
  Drawing text(String text, PagePoint at, Type type, Object... attributes) {
    Object[] first = {
      "x",
      at.x(),
      "y",
      at.y() + type.drop(),
      "font-size",
      type.sizeMm(),
      "font-weight",
      type.bold() ? "700" : "400",
      "text-anchor",
      type.anchor().svg(),
      "fill",
      type.ink()
    };
    out.leaf("text", text, both(first, attributes));
    return this;
  }

  /** A text that is shown when one points at the part that is open. */
  Drawing hint(String text) {
    out.leaf("title", text);
    return this;
  }

  Markup markup() {
    return out;
  }

  /** The finished drawing. */
  String done() {
    return out.close().done();
  }

  static String list(List<PagePoint> points) {
    StringJoiner all = new StringJoiner(" ");
    points.forEach(p -> all.add(Numbers.of(p.x()) + "," + Numbers.of(p.y())));
    return all.toString();
  }

  private static Object[] both(Object[] first, Object[] more) {
    Object[] all = new Object[first.length + more.length];
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(more, 0, all, first.length, more.length);
    return all;
  }
}
