package skidway.geometry;

import java.util.List;
import org.locationtech.jts.geom.LineString;
import skidway.site.Footprint;
import skidway.site.Point;

/** Measures how far footprints lie from a line of points, such as the middle of a lane. */
public final class CentreLine {
  private final LineString line;

  private CentreLine(LineString line) {
    this.line = line;
  }

  public static CentreLine of(List<Point> points) {
    return new CentreLine(Shapes.line(points));
  }

  /** Distance between the footprint and the line, 0 when the line touches or crosses it. */
  public double gapM(Footprint footprint) {
    return line.distance(Shapes.polygon(footprint));
  }

  /** Whether the footprint comes nearer to the line than a limit. */
  public boolean isNearer(Footprint footprint, double limitM) {
    return line.isWithinDistance(Shapes.polygon(footprint), limitM - Rectangle.TOUCH_M);
  }
}
