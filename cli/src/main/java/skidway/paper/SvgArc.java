package skidway.paper;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/**
 * A part of an ellipse between two points, as paths of drawings tell it. Source: SVG 1.1, F.6.5
 * "Conversion from endpoint to center parameterization" and F.6.6 for radii that are too small.
 */
record SvgArc(double rx, double ry, double turnDeg, boolean large, boolean sweep) {

  void add(Path2D path, double x0, double y0, double x1, double y1) {
    if (rx <= 0 || ry <= 0) {
      path.lineTo(x1, y1);
      return;
    }
    AffineTransform turn = AffineTransform.getRotateInstance(Math.toRadians(turnDeg));
    double cos = Math.cos(Math.toRadians(turnDeg));
    double sin = Math.sin(Math.toRadians(turnDeg));
    double dx = (x0 - x1) / 2;
    double dy = (y0 - y1) / 2;
    double px = cos * dx + sin * dy;
    double py = cos * dy - sin * dx;
    double short1 = Math.sqrt(Math.max(1, sq(px / rx) + sq(py / ry)));
    double a = rx * short1;
    double b = ry * short1;
    double under = Math.max(0, sq(a * b) - sq(a * py) - sq(b * px)) / (sq(a * py) + sq(b * px));
    double factor = (large == sweep ? -1 : 1) * Math.sqrt(under);
    double cx = factor * a * py / b;
    double cy = -factor * b * px / a;
    double from = Math.toDegrees(Math.atan2((py - cy) / b, (px - cx) / a));
    double to = Math.toDegrees(Math.atan2((-py - cy) / b, (-px - cx) / a));
    double extent = to - from;
    if (sweep && extent < 0) {
      extent += 360;
    } else if (!sweep && extent > 0) {
      extent -= 360;
    }
    Point2D centre = turn.transform(new Point2D.Double(cx, cy), null);
    // Java counts angles the other way round.
    Arc2D.Double arc = new Arc2D.Double(-a, -b, 2 * a, 2 * b, -from, -extent, Arc2D.OPEN);
    AffineTransform place =
        AffineTransform.getTranslateInstance(
            centre.getX() + (x0 + x1) / 2, centre.getY() + (y0 + y1) / 2);
    place.concatenate(turn);
    path.append(place.createTransformedShape(arc), true);
  }

  private static double sq(double value) {
    return value * value;
  }
}
