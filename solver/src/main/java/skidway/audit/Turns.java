package skidway.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import skidway.erection.Placement;

/**
 * Numbers the levels of the walls in the order of the work. Pieces of one level are laid in any
 * order, so none of them is in the way of another.
 */
final class Turns {
  private final Map<String, Integer> level = new HashMap<>();

  /**
   * @param held marks of pieces that wait for one that is not there; they come after all others
   */
  Turns(List<Placement> order, Set<String> held) {
    int count = 0;
    for (int i = 0; i < order.size(); i++) {
      Placement piece = order.get(i);
      count += i > 0 && !alike(order.get(i - 1), piece, held) ? 1 : 0;
      level.put(piece.piece().mark(), count);
    }
  }

  private static boolean alike(Placement one, Placement next, Set<String> held) {
    boolean sameHeight = Math.round(one.bottomM() * 1000) == Math.round(next.bottomM() * 1000);
    return sameHeight && held.contains(one.piece().mark()) == held.contains(next.piece().mark());
  }

  /** The level on which a piece is laid, if it has a place on a wall. */
  OptionalInt of(String mark) {
    Integer found = level.get(mark);
    return found == null ? OptionalInt.empty() : OptionalInt.of(found);
  }
}
