package skidway.staging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What decks, joists and yards bear while what lies on site is moved: everything counts where it
 * lies or waits at that time. What is overloaded from the start may stay so, but not get worse.
 */
final class LoadsNow {
  private final Board board;
  private final SharedLoads loads;

  /** What lies or waits on each spot now, bottom to top; in a rack in any order. */
  private final Map<Integer, List<Integer>> rows = new HashMap<>();

  private final int[] at;

  /** What has been lifted lies on bearers that are laid for it. */
  private final boolean[] lifted;

  LoadsNow(Board board) {
    this.board = board;
    loads = new SharedLoads(board);
    at = board.home.clone();
    lifted = new boolean[at.length];
    for (int b = 0; b < board.bundleCount(); b++) {
      if (board.lies(b)) {
        row(at[b]).add(b);
      }
    }
    rows.values().forEach(row -> row.sort((a, b) -> board.homeTier[a] - board.homeTier[b]));
    rows.keySet().forEach(this::weigh);
  }

  private List<Integer> row(int spot) {
    return rows.computeIfAbsent(spot, s -> new ArrayList<>());
  }

  private void weigh(int spot) {
    List<Integer> row = row(spot);
    double massKg = row.stream().mapToDouble(b -> board.massKg[b]).sum();
    SharedLimits.Share share =
        row.isEmpty()
            ? SharedLimits.Share.NONE
            : board.share(spot, row.get(0), !lifted[row.get(0)]);
    loads.set(spot, share, massKg);
  }

  /** Takes a bundle from the top of where it is and puts it on top of what is at a spot. */
  void put(int bundle, int spot) {
    int from = at[bundle];
    row(from).remove((Integer) bundle);
    row(spot).add(bundle);
    at[bundle] = spot;
    lifted[bundle] = true;
    weigh(from);
    weigh(spot);
  }

  boolean isLifted(int bundle) {
    return lifted[bundle];
  }

  /** Whether all that is shared is borne, or no worse than before, with a bundle put on a spot. */
  boolean bear(int bundle, int spot) {
    int from = at[bundle];
    boolean wasLifted = lifted[bundle];
    Map<Integer, Double> before = loads.overtaken();
    put(bundle, spot);
    Map<Integer, Double> after = loads.overtaken();
    put(bundle, from);
    lifted[bundle] = wasLifted;
    weigh(from);
    return after.entrySet().stream()
        .allMatch(limit -> limit.getValue() <= before.getOrDefault(limit.getKey(), 0.0) + 1e-6);
  }
}
