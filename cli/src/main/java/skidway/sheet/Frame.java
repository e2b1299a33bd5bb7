package skidway.sheet;

import java.util.List;
import skidway.site.Outline;
import skidway.site.Point;

/**
 * Maps the site onto paper: site metres with y up to millimetres with y down, without turning.
 *
 * @param middle the point of the site that comes to lie in the middle of the area
 * @param area the part of the paper that the map may use
 */
record Frame(Scale scale, Point middle, Box area) {
  PagePoint at(Point p) {
    PagePoint centre = area.centre();
    return new PagePoint(
        centre.x() + scale.mm(p.x() - middle.x()), centre.y() - scale.mm(p.y() - middle.y()));
  }

  List<PagePoint> at(Outline outline) {
    return at(outline.corners());
  }

  List<PagePoint> at(List<Point> points) {
    return points.stream().map(this::at).toList();
  }

  /** The part of the site that the area shows. */
  Extent window() {
    double halfWidthM = area.width() / 2 / scale.mm(1);
    double halfHeightM = area.height() / 2 / scale.mm(1);
    return new Extent(
        middle.x() - halfWidthM,
        middle.y() - halfHeightM,
        middle.x() + halfWidthM,
        middle.y() + halfHeightM);
  }

  double mm(double metres) {
    return scale.mm(metres);
  }
}
