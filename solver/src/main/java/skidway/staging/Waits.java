package skidway.staging;

import java.util.HashSet;
import java.util.Set;

/**
 * Which bundles may be set down and wait for which others that come off later, and which of those
 * that lie there already may be lifted. Everything may until a plan shows that there is no place to
 * wait.
 */
final class Waits {
  /** Every bundle may wait for every other. */
  static final Waits FREE = new Waits(true, Set.of(), Set.of(), false);

  /** No bundle may wait. */
  static final Waits NONE = FREE.withoutAny();

  private record Pair(int waiting, int waitedFor) {}

  private final boolean allowed;
  private final Set<Pair> refused;
  private final Set<Integer> staying;
  private final boolean allStay;

  private Waits(boolean allowed, Set<Pair> refused, Set<Integer> staying, boolean allStay) {
    this.allowed = allowed;
    this.refused = refused;
    this.staying = staying;
    this.allStay = allStay;
  }

  /** Whether a bundle that lies somewhere may be lifted from there. */
  boolean mayLift(Board board, int bundle) {
    return !allStay && !board.stays[bundle] && (staying.isEmpty() || !staying.contains(bundle));
  }

  /** The same, but one bundle stays where it lies. */
  Waits withoutLifting(int bundle) {
    Set<Integer> more = new HashSet<>(staying);
    more.add(bundle);
    return new Waits(allowed, refused, more, allStay);
  }

  /** The same, but all that lies somewhere stays there. */
  Waits withoutMoves() {
    return new Waits(allowed, refused, staying, true);
  }

  /** The same, but no bundle may wait for another. */
  Waits withoutAny() {
    return new Waits(false, Set.of(), staying, allStay);
  }

  boolean mayWaitFor(int waiting, int waitedFor) {
    return allowed && (refused.isEmpty() || !refused.contains(new Pair(waiting, waitedFor)));
  }

  /** The same, but one bundle may not wait for another any more. */
  Waits without(int waiting, int waitedFor) {
    Set<Pair> more = new HashSet<>(refused);
    more.add(new Pair(waiting, waitedFor));
    return new Waits(allowed, more, staying, allStay);
  }
}
