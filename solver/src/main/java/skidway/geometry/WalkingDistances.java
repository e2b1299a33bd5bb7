package skidway.geometry;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.site.Point;
import skidway.site.Site;

/**
 * Measures all walks of a job: from every place where people draw pieces to every piece's place,
 * with the walls that have risen by the time the piece is pulled or stood already.
 */
public final class WalkingDistances {
  private WalkingDistances() {}

  /**
   * Lengths of the shortest walks, climbs counted, to whichever side of the wall is nearer.
   *
   * @param accesses where people stand to draw pieces
   * @return metres by index of the access, then by pull index; infinite where nobody gets through
   */
  public static double[][] between(
      Site site, Walker walker, List<Point> accesses, PullOrder order) {
    Terrain terrain = new Terrain(site, walker);
    List<ViewPoint> views = accesses.stream().map(ViewPoint::new).toList();
    List<Placement> pieces = order.placements();
    double[][] metres = new double[views.size()][pieces.size()];
    Set<String> risen = new TreeSet<>();
    site.walls().stream()
        .filter(wall -> wall.builtM() > walker.stepOverM())
        .forEach(wall -> risen.add(wall.id()));
    int from = 0;
    while (from < pieces.size()) {
      Set<String> standing = Set.copyOf(risen);
      int to = from;
      while (to < pieces.size() && standing.containsAll(risen)) {
        if (pieces.get(to).topM() > walker.stepOverM()) {
          risen.add(pieces.get(to).wall().id());
        }
        to++;
      }
      new WalkingMap(terrain, standing).measure(views, pieces.subList(from, to), metres, from);
      from = to;
    }
    return metres;
  }

  /**
   * Lengths of the shortest walks between two rows of places when so many pieces are laid.
   *
   * @param laid how many pieces of the pull order are laid by then
   * @return metres by index of the start, then by index of the end; infinite where nobody gets
   *     through
   */
  public static double[][] between(
      Site site, Walker walker, List<Point> from, List<Point> to, PullOrder order, int laid) {
    return WalkingMap.of(site, risen(site, walker, order, laid), walker).metresBetween(from, to);
  }

  /** The walls that stand too high to step over when so many pieces are laid. */
  public static Set<String> risen(Site site, Walker walker, PullOrder order, int laid) {
    Set<String> risen = new TreeSet<>();
    site.walls().stream()
        .filter(wall -> wall.builtM() > walker.stepOverM())
        .forEach(wall -> risen.add(wall.id()));
    order.placements().subList(0, laid).stream()
        .filter(piece -> piece.topM() > walker.stepOverM())
        .forEach(piece -> risen.add(piece.wall().id()));
    return risen;
  }
}
