package skidway.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import skidway.site.Footprint;
import skidway.site.Wall;
import skidway.site.WallOpening;

/**
 * Computes what a risen wall closes to people: its thickness along its length, less the doors whose
 * sill can be stepped over. At both ends it reaches half its thickness further than its centre
 * line, so that walls meeting at a corner close the corner.
 */
final class RisenWall {
  private static final double LEAST_PIECE_M = 0.001;

  private RisenWall() {}

  static List<Footprint> closedPieces(Wall wall, Walker walker) {
    List<Footprint> pieces = new ArrayList<>();
    double from = -wall.thicknessM() / 2;
    List<WallOpening> openings =
        wall.openings().stream().sorted(Comparator.comparingDouble(WallOpening::fromM)).toList();
    for (WallOpening opening : openings) {
      if (opening.door() && opening.sillM() <= walker.stepOverM()) {
        add(pieces, wall, from, Math.max(0, opening.fromM()));
        from = Math.max(from, Math.min(wall.lengthM(), opening.toM()));
      }
    }
    add(pieces, wall, from, wall.lengthM() + wall.thicknessM() / 2);
    return pieces;
  }

  private static void add(List<Footprint> pieces, Wall wall, double fromM, double toM) {
    if (toM - fromM > LEAST_PIECE_M) {
      double heading = wall.footprint().headingDeg();
      pieces.add(
          new Footprint(wall.at((fromM + toM) / 2), heading, toM - fromM, wall.thicknessM()));
    }
  }
}
