package skidway.shakeout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.site.Site;
import skidway.site.Wall;

/** The walls as they stand when so many pieces are laid. */
final class Rise {
  private Rise() {}

  /**
   * The site then: each wall is as high as it is whole, which is up to the lowest piece that is
   * still to be laid on it. Over an opening that is up to the piece above it, as where a site says
   * what stands already.
   */
  static Site after(Site site, PullOrder order, int laid) {
    Map<String, Double> toppedM = new HashMap<>();
    Map<String, Double> openM = new HashMap<>();
    List<Placement> pieces = order.placements();
    for (int i = 0; i < pieces.size(); i++) {
      Placement piece = pieces.get(i);
      if (i < laid) {
        toppedM.merge(piece.wall().id(), piece.topM(), Math::max);
      } else {
        openM.merge(piece.wall().id(), piece.bottomM(), Math::min);
      }
    }
    return site.withWalls(
        site.walls().stream()
            .map((Wall wall) -> wall.standing(wholeM(wall, toppedM, openM)))
            .toList());
  }

  private static double wholeM(Wall wall, Map<String, Double> toppedM, Map<String, Double> openM) {
    double topM = toppedM.getOrDefault(wall.id(), 0.0);
    double wholeM = Math.min(topM, openM.getOrDefault(wall.id(), topM));
    return Math.max(wall.builtM(), wholeM);
  }
}
