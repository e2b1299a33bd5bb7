package skidway.staging;

/**
 * Pairs of bundles of which neither may lie on the other, so that they are never in one stack,
 * whatever else is in it. Looked up when somebody asks, and then remembered.
 */
final class Strangers {
  private static final byte UNKNOWN = 0;
  private static final byte MAY = 1;
  private static final byte NEVER = 2;

  private final Board board;
  private final Waits waits;

  /** By higher and lower number. */
  private final byte[][] known;

  Strangers(Board board, Waits waits) {
    this.board = board;
    this.waits = waits;
    this.known = new byte[board.bundleCount()][];
  }

  /** Whether two bundles that meet on site are never in one stack. */
  boolean are(int a, int b) {
    int high = Math.max(a, b);
    int low = Math.min(a, b);
    byte[] row = known[high];
    if (row == null) {
      row = new byte[high];
      known[high] = row;
    }
    if (row[low] == UNKNOWN) {
      row[low] = mayMeet(low, high) ? MAY : NEVER;
    }
    return row[low] == NEVER;
  }

  /**
   * One that comes when the other is gone may follow it; what lies there from the start may lie
   * against the rules, which is forgiven.
   */
  private boolean mayMeet(int low, int high) {
    boolean meet = (board.there[low] & board.there[high]) != 0;
    if (!meet || board.lies(low) || board.lies(high)) {
      return true;
    }
    Pile pile = new Pile(board, new int[] {low, high}, 2, Occupancy.NOWHERE);
    Stacking pair = new Stacking(board, pile, waits, Stacking.Heed.SUPPORT);
    return pair.onTopMs(0) != Board.REFUSED || pair.onTopMs(1) != Board.REFUSED;
  }
}
