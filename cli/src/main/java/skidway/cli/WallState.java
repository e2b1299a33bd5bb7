package skidway.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.timber.Piece;

/**
 * How far one wall is built.
 *
 * @param course the highest course that is whole together with all below it; 0 when none is
 * @param next the piece that the pull list has next for this wall, or an empty text; when it is
 *     missing or damaged, that is said
 */
record WallState(String wallId, int course, int pulled, int pieces, String next) {

  /** Walls in the site's order; those without pieces are left out. */
  static List<WallState> all(Standing standing) {
    Map<String, List<Piece>> byWall = new LinkedHashMap<>();
    standing.task().site().walls().forEach(wall -> byWall.put(wall.id(), new ArrayList<>()));
    PullOrder.of(standing.task().site(), standing.task().delivery().pieces()).placements().stream()
        .map(Placement::piece)
        .forEach(p -> byWall.computeIfAbsent(p.wallId(), w -> new ArrayList<>()).add(p));
    List<WallState> walls = new ArrayList<>();
    byWall.forEach(
        (wallId, pieces) -> {
          if (!pieces.isEmpty()) {
            walls.add(of(wallId, pieces, standing));
          }
        });
    return walls;
  }

  private static WallState of(String wallId, List<Piece> pieces, Standing standing) {
    List<Piece> left =
        pieces.stream().filter(p -> !standing.progress().pulled().contains(p.mark())).toList();
    Map<Integer, Boolean> whole = new TreeMap<>();
    pieces.forEach(p -> whole.merge(p.course(), !left.contains(p), Boolean::logicalAnd));
    int course = 0;
    for (Map.Entry<Integer, Boolean> entry : whole.entrySet()) {
      if (!entry.getValue()) {
        break;
      }
      course = entry.getKey();
    }
    String next = left.isEmpty() ? "" : left.get(0).mark();
    boolean withheld = standing.progress().withheld().contains(next);
    return new WallState(
        wallId,
        course,
        pieces.size() - left.size(),
        pieces.size(),
        withheld ? next + ", not to hand" : next);
  }
}
