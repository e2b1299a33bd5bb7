package skidway.staging;

import java.util.HashSet;
import java.util.Set;

/**
 * Which bundles may be set down and wait for which others that come off later. Everything may until
 * a plan shows that there is no place to wait.
 */
final class Waits {
  /** Every bundle may wait for every other. */
  static final Waits FREE = new Waits(true, Set.of());

  /** No bundle may wait. */
  static final Waits NONE = new Waits(false, Set.of());

  private record Pair(int waiting, int waitedFor) {}

  private final boolean allowed;
  private final Set<Pair> refused;

  private Waits(boolean allowed, Set<Pair> refused) {
    this.allowed = allowed;
    this.refused = refused;
  }

  boolean mayWaitFor(int waiting, int waitedFor) {
    return allowed && (refused.isEmpty() || !refused.contains(new Pair(waiting, waitedFor)));
  }

  /** The same, but one bundle may not wait for another any more. */
  Waits without(int waiting, int waitedFor) {
    Set<Pair> more = new HashSet<>(refused);
    more.add(new Pair(waiting, waitedFor));
    return new Waits(allowed, more);
  }
}
