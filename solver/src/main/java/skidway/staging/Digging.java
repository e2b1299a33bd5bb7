package skidway.staging;

import java.util.Arrays;
import skidway.erection.PullOrder;
import skidway.plan.Task;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;

/**
 * What a bundle's own layers have moved aside wherever it lies flat: each piece that lies over one
 * of an earlier turn. It is moved once; a bundle beneath that is needed earlier too adds nothing to
 * it.
 */
final class Digging {
  /** The earliest turn of its pieces. */
  final int first;

  /** How many pieces lie over an earlier one of a lower layer. */
  final int inside;

  /** The turns of all others, growing. */
  private final int[] others;

  Digging(Task task, Bundle bundle, PullOrder order) {
    first =
        bundle.pieces().stream()
            .mapToInt(p -> order.turn(order.indexOf(p)))
            .min()
            .orElse(Integer.MAX_VALUE);
    others =
        bundle.packed().stream()
            .filter(packed -> !liesOverEarlier(task, bundle, packed, order))
            .mapToInt(packed -> turn(packed, order))
            .sorted()
            .toArray();
    inside = bundle.packed().size() - others.length;
  }

  private static boolean liesOverEarlier(
      Task task, Bundle bundle, PackedPiece packed, PullOrder order) {
    return task.beneathOnSpot(bundle, packed).stream()
        .anyMatch(lower -> order.turn(order.indexOf(lower)) < turn(packed, order));
  }

  private static int turn(PackedPiece packed, PullOrder order) {
    return order.turn(order.indexOf(packed.piece()));
  }

  /** How many more pieces are moved aside for something beneath the bundle that has a turn. */
  int laterThan(int turn) {
    int at = Arrays.binarySearch(others, turn);
    int later = at < 0 ? -at - 1 : at;
    while (later < others.length && others[later] == turn) {
      later++;
    }
    return others.length - later;
  }
}
