package skidway.paper;

import java.awt.geom.Path2D;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the outlines of a drawing's paths and lists of points. */
final class SvgPath {
  private static final Pattern TOKEN =
      Pattern.compile("[A-Za-z]|[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");

  private final Matcher tokens;
  private final Path2D.Double path = new Path2D.Double();
  private boolean more;
  private double x;
  private double y;
  private double startX;
  private double startY;

  private SvgPath(String text) {
    this.tokens = TOKEN.matcher(text);
    this.more = tokens.find();
  }

  /**
   * The outline a path describes.
   *
   * @throws IllegalArgumentException if it has other parts than lines, arcs and curves
   */
  static Path2D.Double of(String d) {
    SvgPath reader = new SvgPath(d);
    char command = 'M';
    while (reader.more) {
      if (Character.isLetter(reader.tokens.group().charAt(0))) {
        command = reader.tokens.group().charAt(0);
        reader.next();
      }
      reader.draw(command);
      // Further pairs after a move are lines.
      command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
    }
    return reader.path;
  }

  /** The outline through a list of points. */
  static Path2D.Double through(String points, boolean closed) {
    return of("M" + points + (closed ? "Z" : ""));
  }

  private void draw(char command) {
    boolean relative = Character.isLowerCase(command);
    double fromX = relative ? x : 0;
    double fromY = relative ? y : 0;
    switch (Character.toUpperCase(command)) {
      case 'M' -> {
        move(fromX + number(), fromY + number());
        startX = x;
        startY = y;
        path.moveTo(x, y);
      }
      case 'L' -> line(fromX + number(), fromY + number());
      case 'H' -> line(fromX + number(), y);
      case 'V' -> line(x, fromY + number());
      case 'Q' -> {
        double cx = fromX + number();
        double cy = fromY + number();
        move(fromX + number(), fromY + number());
        path.quadTo(cx, cy, x, y);
      }
      case 'C' -> {
        double ax = fromX + number();
        double ay = fromY + number();
        double bx = fromX + number();
        double by = fromY + number();
        move(fromX + number(), fromY + number());
        path.curveTo(ax, ay, bx, by, x, y);
      }
      case 'A' -> {
        SvgArc arc = new SvgArc(number(), number(), number(), number() != 0, number() != 0);
        double x0 = x;
        double y0 = y;
        move(fromX + number(), fromY + number());
        arc.add(path, x0, y0, x, y);
      }
      case 'Z' -> {
        path.closePath();
        move(startX, startY);
      }
      default ->
          throw new IllegalArgumentException(
              "Drawings on paper have no path part " + command + ".");
    }
  }

  private void line(double toX, double toY) {
    move(toX, toY);
    path.lineTo(x, y);
  }

  private void move(double toX, double toY) {
    x = toX;
    y = toY;
  }

  private double number() {
    if (!more) {
      throw new IllegalArgumentException("A path ends too early.");
    }
    double value = Double.parseDouble(tokens.group());
    next();
    return value;
  }

  private void next() {
    more = tokens.find();
  }
}
