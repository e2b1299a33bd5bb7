package skidway.paper;

import java.awt.geom.Path2D;

/** Reads the outlines of a drawing's paths and lists of points. */
final class SvgPath {
  private final String text;
  private final Path2D.Double path = new Path2D.Double();
  private int at;
  private double x;
  private double y;
  private double startX;
  private double startY;

  private SvgPath(String text) {
    this.text = text;
    skipBlanks();
  }

  /**
   * The outline a path describes.
   *
   * <p>Read letter by letter: the codes on tags have hundreds of parts each.
   *
   * @throws IllegalArgumentException if it has other parts than lines, arcs and curves
   */
  static Path2D.Double of(String d) {
    SvgPath reader = new SvgPath(d);
    char command = 'M';
    while (reader.more()) {
      if (Character.isLetter(d.charAt(reader.at))) {
        command = d.charAt(reader.at++);
        reader.skipBlanks();
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

  private boolean more() {
    return at < text.length();
  }

  private double number() {
    int from = at;
    skip("+-");
    int whole = at;
    skipDigits();
    int digits = at - whole;
    boolean plain = true;
    if (is('.')) {
      plain = false;
      at++;
      int part = at;
      skipDigits();
      digits += at - part;
    }
    if (digits == 0) {
      throw new IllegalArgumentException("A path has no figure where it must: " + text);
    }
    if (is('e') || is('E')) {
      plain = false;
      at++;
      skip("+-");
      skipDigits();
    }
    String figure = text.substring(from, at);
    skipBlanks();
    return plain && digits < 10 ? Integer.parseInt(figure) : Double.parseDouble(figure);
  }

  private boolean is(char letter) {
    return more() && text.charAt(at) == letter;
  }

  private void skip(String one) {
    if (more() && one.indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }

  private void skipDigits() {
    while (more() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
  }

  private void skipBlanks() {
    while (more() && (text.charAt(at) == ',' || Character.isWhitespace(text.charAt(at)))) {
      at++;
    }
  }
}
