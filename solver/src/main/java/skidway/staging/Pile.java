package skidway.staging;

import java.util.Arrays;

/**
 * The bundles of one spot in arrays: which of them are there together, how high and heavy any of
 * them are. Bundles are told by their place in the set, sets of them by bits.
 */
final class Pile {
  final int size;
  final int spot;

  /** Bundle numbers. */
  final int[] bundles;

  /** For each moment at which something of it is there, what is there then. */
  final int[] there;

  /** For each bundle those that are there while it is, itself included. */
  final int[] with;

  /** For each bundle what is there when it comes, itself included. */
  final int[] whenItComes;

  private final double[] heightM;
  private final double[] massKg;

  /**
   * @param set the first {@code size} count
   */
  Pile(Board board, int[] set, int size, int spot) {
    this.size = size;
    this.spot = spot;
    this.bundles = Arrays.copyOf(set, size);
    this.with = new int[size];
    this.whenItComes = new int[size];
    this.there = there(board);
    this.heightM = new double[1 << size];
    this.massKg = new double[1 << size];
    for (int some = 1; some < heightM.length; some++) {
      int bundle = bundles[Integer.numberOfTrailingZeros(some)];
      heightM[some] = heightM[some & some - 1] + board.tierM[bundle];
      massKg[some] = massKg[some & some - 1] + board.massKg[bundle];
    }
  }

  private int[] there(Board board) {
    int[] moments = new int[board.moments];
    int used = 0;
    for (int moment = 0; moment < board.moments; moment++) {
      int now = 0;
      for (int i = 0; i < size; i++) {
        now |= (board.there[bundles[i]] >> moment & 1) == 1 ? 1 << i : 0;
      }
      for (int i = 0; i < size; i++) {
        with[i] |= (now >> i & 1) == 1 ? now : 0;
        whenItComes[i] = board.comes[bundles[i]] == moment ? now : whenItComes[i];
      }
      if (now != 0) {
        moments[used++] = now;
      }
    }
    return Arrays.copyOf(moments, used);
  }

  int all() {
    return (1 << size) - 1;
  }

  /** Height of some of them on each other, each on its bearers. */
  double heightM(int some) {
    return heightM[some];
  }

  /** What some of them weigh at most. */
  double massKg(int some) {
    return massKg[some];
  }
}
