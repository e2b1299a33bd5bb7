package skidway.geometry;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import skidway.site.Point;

/** A straight line from one point to another, such as the way of a load or an overhead line. */
public record Stretch(Point from, Point to) {
  /** Metres between the nearest points of both; 0 where they meet. */
  public double distanceTo(Stretch other) {
    return segment().distance(other.segment());
  }

  private LineSegment segment() {
    return new LineSegment(new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y()));
  }
}
