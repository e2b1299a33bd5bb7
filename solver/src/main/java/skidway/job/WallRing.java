package skidway.job;

import java.util.List;
import skidway.site.Point;
import skidway.site.Wall;

/**
 * Checks that the walls go round the building counter-clockwise. Clockwise walls are a problem and
 * not a remark: left and right, inside and outside would be exchanged, every piece planned at the
 * mirrored place. Walls that do not close a ring have no inside to tell, so that is a remark.
 */
final class WallRing {
  /** How far a wall may end from the next one's start, beyond the wall's thickness. */
  private static final double CORNER_GAP_M = 0.05;

  private static final String RULE =
      "walls are listed counter-clockwise seen from above, each from its left end seen from outside";

  private WallRing() {}

  /** Looks at every run of walls that starts where it ends. */
  static void check(Fields site, List<Read<Wall>> walls) {
    boolean closed = false;
    int first = 0;
    for (int i = 0; i < walls.size(); i++) {
      Wall wall = walls.get(i).value();
      boolean runEnds =
          i + 1 == walls.size() || !meets(wall, wall.end(), walls.get(i + 1).value().start());
      boolean ring = i - first >= 2 && meets(wall, wall.end(), walls.get(first).value().start());
      if (ring) {
        closed = true;
        direction(walls.subList(first, i + 1));
      }
      if (ring || runEnds) {
        first = i + 1;
      }
    }
    if (!closed && walls.size() > 1 && site.sound()) {
      site.remark(
          site.at("walls"),
          "walls that do not close a ring",
          RULE,
          "check that the inside is on the left of the way along each wall");
    }
  }

  private static boolean meets(Wall wall, Point end, Point start) {
    return end.distanceTo(start) <= wall.thicknessM() + CORNER_GAP_M;
  }

  private static void direction(List<Read<Wall>> ring) {
    double twiceAreaM2 = 0;
    for (Read<Wall> wall : ring) {
      Point a = wall.value().start();
      Point b = wall.value().end();
      twiceAreaM2 += a.x() * b.y() - b.x() * a.y();
    }
    if (twiceAreaM2 < 0) {
      Read<Wall> first = ring.get(0);
      first
          .at()
          .report(
              first.at().at("from"),
              "walls that go round clockwise, from \"" + first.value().id() + '"',
              RULE,
              "turn their order round, and exchange \"from\" and \"to\" of each");
    }
  }
}
