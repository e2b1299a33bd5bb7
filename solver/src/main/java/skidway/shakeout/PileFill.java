package skidway.shakeout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Chooses which timbers to lay into a pile and finds the best choice exactly. Timbers come in the
 * order in which they are laid down, the one needed last first, and fill layer after layer; one may
 * be no longer than any beneath it and what may overhang. Dynamic programming over the timbers, how
 * many lie, and the shortest of them.
 */
final class PileFill {
  /**
   * A timber that may go into the pile.
   *
   * @param gainMs what that saves but for picking it from the pile
   */
  record Timber(int pull, double lengthM, int people, long gainMs) {}

  /** What it costs so many people to pick a timber from a layer; 0 is the lowest. */
  interface PickCost {
    long ms(int people, int layer);
  }

  private static final long NEVER = Long.MIN_VALUE / 4;

  private final int perLayer;
  private final double overhangM;
  private final PickCost pick;

  /**
   * @param perLayer how many timbers lie side by side
   * @param overhangM how much longer than one beneath it a timber may be
   */
  PileFill(int perLayer, double overhangM, PickCost pick) {
    this.perLayer = perLayer;
    this.overhangM = overhangM;
    this.pick = pick;
  }

  /**
   * The best pile, from the bottom up; empty if none saves anything.
   *
   * @param timbers in any order
   * @param most how many there may be
   */
  List<Timber> best(List<Timber> timbers, int most) {
    List<Timber> turn = new ArrayList<>(timbers);
    turn.sort((a, b) -> Integer.compare(b.pull(), a.pull()));
    double[] lengths = turn.stream().mapToDouble(Timber::lengthM).distinct().sorted().toArray();
    int k = turn.size();
    int m = lengths.length;
    int c = Math.min(most, k);
    // By timbers lying and the number of the shortest length among them; m stands for none.
    long[][] saved = new long[c + 1][m + 1];
    for (long[] row : saved) {
      Arrays.fill(row, NEVER);
    }
    saved[0][m] = 0;
    byte[][][] cameFrom = new byte[k][c + 1][m + 1];
    for (int t = 0; t < k; t++) {
      Timber timber = turn.get(t);
      int own = Arrays.binarySearch(lengths, timber.lengthM());
      for (int lying = c - 1; lying >= 0; lying--) {
        long gain = timber.gainMs() - pick.ms(timber.people(), lying / perLayer);
        for (int shortest = own; shortest <= m; shortest++) {
          take(saved, cameFrom[t], lying, shortest, own, gain);
        }
        for (int shortest = own - 1;
            shortest >= 0 && lengths[own] <= lengths[shortest] + overhangM + 1e-9;
            shortest--) {
          take(saved, cameFrom[t], lying, shortest, shortest, gain);
        }
      }
    }
    return read(turn, lengths, saved, cameFrom);
  }

  /** The state before is told as its shortest length and one more; 0 means not taken. */
  private static void take(
      long[][] saved, byte[][] cameFrom, int lying, int before, int after, long gain) {
    if (saved[lying][before] == NEVER) {
      return;
    }
    long with = saved[lying][before] + gain;
    if (with > saved[lying + 1][after]) {
      saved[lying + 1][after] = with;
      cameFrom[lying + 1][after] = (byte) (before + 1);
    }
  }

  private static List<Timber> read(
      List<Timber> turn, double[] lengths, long[][] saved, byte[][][] cameFrom) {
    int lying = 0;
    int shortest = lengths.length;
    for (int c = 0; c < saved.length; c++) {
      for (int s = 0; s <= lengths.length; s++) {
        if (saved[c][s] > saved[lying][shortest]) {
          lying = c;
          shortest = s;
        }
      }
    }
    List<Timber> chosen = new ArrayList<>();
    for (int t = turn.size() - 1; t >= 0 && lying > 0; t--) {
      int before = cameFrom[t][lying][shortest] & 0xff;
      if (before > 0) {
        chosen.add(turn.get(t));
        lying--;
        shortest = before - 1;
      }
    }
    Collections.reverse(chosen);
    return chosen;
  }
}
