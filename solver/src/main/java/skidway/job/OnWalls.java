package skidway.job;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.site.Site;
import skidway.timber.Piece;

/**
 * Checks that pieces lie on their wall. Of each course of a wall only the first piece beyond it is
 * told, because those to its right are beyond it for the same reason.
 */
record OnWalls(Site site) {
  /** A course is measured by tape, timber by timber. */
  private static final double TAPE_TOLERANCE_M = 0.01;

  void check(List<PiecesReader.PieceRow> pieces) {
    Map<String, CsvRow> rows = new HashMap<>();
    pieces.forEach(p -> rows.put(p.packed().piece().mark(), p.row()));
    List<Piece> all = pieces.stream().map(p -> p.packed().piece()).toList();
    Set<Course> told = new HashSet<>();
    for (Placement placement : PullOrder.of(site, all).placements()) {
      Piece piece = placement.piece();
      if (isBeyond(placement) && told.add(new Course(piece.wallId(), piece.course()))) {
        report(placement, rows.get(piece.mark()));
      }
    }
  }

  private static boolean isBeyond(Placement p) {
    double most = Bounds.CORNER_LAP_M + TAPE_TOLERANCE_M;
    return p.fromM() < -most || p.toM() > p.wall().lengthM() + most;
  }

  private static void report(Placement p, CsvRow row) {
    Piece piece = p.piece();
    boolean left = p.fromM() < 0 && p.toM() <= p.wall().lengthM() + Bounds.CORNER_LAP_M;
    row.report(
        piece.fromLeftM().isPresent() ? "from_left" : "length",
        "piece \""
            + piece.mark()
            + (left
                ? "\" that starts " + row.length(-p.fromM()) + " before its wall's left end"
                : "\" that ends at " + row.length(p.toM())),
        "wall "
            + p.wall().id()
            + " is "
            + row.length(p.wall().lengthM())
            + " long, and timbers may pass a corner by "
            + row.length(Bounds.CORNER_LAP_M),
        "correct the length, position or \"from_left\" of the pieces of course "
            + piece.course()
            + ", or the wall's ends in site.json");
  }

  private record Course(String wallId, int course) {}
}
