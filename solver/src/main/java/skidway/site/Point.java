package skidway.site;

/** A point or vector in site axes, metres. */
public record Point(double x, double y) {
  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("The point (" + x + ", " + y + ") must be finite.");
    }
  }

  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  public double length() {
    return Math.sqrt(x * x + y * y);
  }

  public double distanceTo(Point other) {
    double dx = x - other.x;
    double dy = y - other.y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** How far along a unit vector; in general the scalar product. */
  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /** Positive when the other vector lies to the left of this one; 0 when both are parallel. */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  /** The vector turned a quarter turn counter-clockwise. */
  public Point turnedLeft() {
    return new Point(-y, x);
  }

  /** The vector of length 1 at an angle counter-clockwise from the x axis. */
  public static Point unit(double degrees) {
    return new Point(cleanCos(degrees), cleanCos(degrees - 90));
  }

  /** Cosine that is exactly 0 or ±1 at right angles, so that square layouts stay square. */
  private static double cleanCos(double degrees) {
    double d = ((degrees % 360) + 360) % 360;
    if (d == 90 || d == 270) {
      return 0;
    }
    return d == 0 ? 1 : d == 180 ? -1 : Math.cos(Math.toRadians(d));
  }
}
