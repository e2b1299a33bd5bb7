package skidway.geometry;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import skidway.site.Outline;
import skidway.site.Point;

/**
 * Cuts and joins shapes on a grid of a tenth of a millimetre.
 *
 * <p>On the grid every coordinate is a whole number, so edges that were meant to lie on one line do
 * (a wall's face and the deck's edge under it), no hair-thin passage stays open between them, and
 * which side of a line a point lies on can be told without rounding. Paths are off by at most that
 * tenth of a millimetre at each bend.
 */
final class Grid {
  static final double PER_M = 10_000;

  private static final PrecisionModel WHOLE = new PrecisionModel(1);
  private static final GeometryFactory FACTORY = new GeometryFactory(WHOLE);

  private Grid() {}

  static long of(double metres) {
    return Math.round(metres * PER_M);
  }

  /** Length in metres of a way on the grid. */
  static double metres(long dx, long dy) {
    return Math.sqrt((double) (dx * dx + dy * dy)) / PER_M;
  }

  static Coordinate coordinate(Point point) {
    return new Coordinate(of(point.x()), of(point.y()));
  }

  static Geometry polygon(Outline outline) {
    return union(List.of(scaled(Shapes.polygon(outline))));
  }

  /** Scaled but not yet rounded: the cut that follows rounds safely, whatever collapses. */
  static Geometry scaled(Polygon metres) {
    return AffineTransformation.scaleInstance(PER_M, PER_M).transform(metres);
  }

  static Geometry union(List<Geometry> shapes) {
    return shapes.isEmpty()
        ? FACTORY.createPolygon()
        : UnaryUnionNG.union(FACTORY.buildGeometry(shapes), WHOLE);
  }

  static Geometry cut(Geometry from, Geometry away) {
    return OverlayNG.overlay(from, away, OverlayNG.DIFFERENCE, WHOLE);
  }

  static Geometry common(Geometry a, Geometry b) {
    return OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, WHOLE);
  }

  /** A square two millimetres wide, to close a place where two obstacles touch in one point. */
  static Geometry plug(Coordinate at) {
    double half = PER_M / 1000;
    Envelope square = new Envelope(at);
    square.expandBy(half);
    return FACTORY.toGeometry(square);
  }

  static Geometry line(Point from, Point to) {
    return FACTORY.createLineString(new Coordinate[] {coordinate(from), coordinate(to)});
  }
}
