package skidway.bound;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Groups of spots of which any two exclude each other, so that one of a group is used at most.
 * Every pair that excludes each other is in a group; groups are as large as they can be, since one
 * large group says more than all its pairs.
 */
final class Cliques {
  private final int[][] ofSpot;
  private final int count;

  private Cliques(int[][] ofSpot, int count) {
    this.ofSpot = ofSpot;
    this.count = count;
  }

  static Cliques of(Ground ground) {
    int spots = ground.spots();
    BitSet[] excludes = Clashes.excludes(ground);
    List<List<Integer>> ofSpot = new ArrayList<>();
    BitSet[] open = new BitSet[spots];
    for (int s = 0; s < spots; s++) {
      ofSpot.add(new ArrayList<>());
      open[s] = (BitSet) excludes[s].clone();
    }
    int count = 0;
    for (int s = 0; s < spots; s++) {
      for (int t = open[s].nextSetBit(s + 1); t >= 0; t = open[s].nextSetBit(s + 1)) {
        List<Integer> members = grown(s, t, excludes, open);
        for (int member : members) {
          ofSpot.get(member).add(count);
          members.forEach(open[member]::clear);
        }
        count++;
      }
    }
    return new Cliques(
        ofSpot.stream()
            .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new),
        count);
  }

  /** Takes in what brings in most pairs that are in no group yet. */
  private static List<Integer> grown(int s, int t, BitSet[] excludes, BitSet[] open) {
    List<Integer> members = new ArrayList<>(List.of(s, t));
    BitSet common = (BitSet) excludes[s].clone();
    common.and(excludes[t]);
    while (!common.isEmpty()) {
      int best = -1;
      int mostNew = -1;
      for (int c = common.nextSetBit(0); c >= 0; c = common.nextSetBit(c + 1)) {
        int fresh = 0;
        for (int member : members) {
          fresh += open[c].get(member) ? 1 : 0;
        }
        if (fresh > mostNew) {
          mostNew = fresh;
          best = c;
        }
      }
      members.add(best);
      common.and(excludes[best]);
    }
    return members;
  }

  int count() {
    return count;
  }

  /**
   * The rents that a spot pays.
   *
   * @param moments at which it is used, a bit each
   * @return their numbers among the prices
   */
  int[] rents(int spot, long moments, Prices prices) {
    int[] rents = new int[ofSpot[spot].length * Long.bitCount(moments)];
    int count = 0;
    for (int g : ofSpot[spot]) {
      for (long left = moments; left != 0; left &= left - 1) {
        rents[count++] = prices.rent(g, Long.numberOfTrailingZeros(left));
      }
    }
    return rents;
  }

  /** The groups a spot belongs to. */
  int[] ofSpot(int spot) {
    return ofSpot[spot];
  }
}
