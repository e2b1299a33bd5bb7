package skidway.geometry;

import java.util.List;
import skidway.site.Footprint;
import skidway.site.Point;

/** Measures how far footprints lie from a line of points, such as the middle of a lane. */
public final class CentreLine {
  private final Edges edges;

  private CentreLine(Edges edges) {
    this.edges = edges;
  }

  public static CentreLine of(List<Point> points) {
    return new CentreLine(Edges.open(points));
  }

  /** Distance between the footprint and the line, 0 when the line touches or crosses it. */
  public double gapM(Footprint footprint) {
    return edges.gapM(Rectangle.of(footprint));
  }

  /** Whether the footprint comes nearer to the line than a limit. */
  public boolean isNearer(Footprint footprint, double limitM) {
    return isNearer(Rectangle.of(footprint), limitM);
  }

  /** The same of a rectangle that is asked about more than one line. */
  public boolean isNearer(Rectangle rectangle, double limitM) {
    return edges.isNearer(rectangle, limitM - Rectangle.TOUCH_M);
  }
}
