package skidway.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Divides sorted lengths into a few runs so that the length lost, each item lying on a spot as long
 * as the longest of its run, is least. As few runs as lose no more than 0.15 m an item on average.
 * Exact, by dynamic programming; quadratic in the number of lengths told apart.
 */
final class LengthClasses {
  private static final double SPARE_M = 0.15;

  /** Lengths nearer than this to the first of a group are not told apart. */
  private static final double SAME_M = 0.01;

  private final double[] lengthsM;
  private final int[] groupEnds;
  private final double[] sumsM;

  private LengthClasses(double[] lengthsM) {
    this.lengthsM = lengthsM;
    groupEnds = groupEnds(lengthsM);
    sumsM = new double[lengthsM.length + 1];
    for (int i = 0; i < lengthsM.length; i++) {
      sumsM[i + 1] = sumsM[i] + lengthsM[i];
    }
  }

  /**
   * Where the runs end.
   *
   * @param sortedM lengths, shortest first
   * @return for each run the index after its last item; the last is the number of lengths
   */
  static List<Integer> ends(double[] sortedM, int mostRuns) {
    return sortedM.length == 0 ? List.of() : new LengthClasses(sortedM).best(mostRuns);
  }

  private static int[] groupEnds(double[] lengthsM) {
    int[] ends = new int[lengthsM.length];
    int count = 0;
    int first = 0;
    for (int i = 1; i <= lengthsM.length; i++) {
      if (i == lengthsM.length || lengthsM[i] - lengthsM[first] >= SAME_M) {
        ends[count++] = i;
        first = i;
      }
    }
    return Arrays.copyOf(ends, count);
  }

  private List<Integer> best(int mostRuns) {
    int groups = groupEnds.length;
    double[] lostM = new double[groups];
    int[][] before = new int[mostRuns][groups];
    for (int end = 0; end < groups; end++) {
      lostM[end] = lostM(0, groupEnds[end]);
      before[0][end] = -1;
    }
    int runs = 1;
    while (runs < mostRuns && lostM[groups - 1] > SPARE_M * lengthsM.length) {
      lostM = withOneRunMore(lostM, before[runs]);
      runs++;
    }
    List<Integer> ends = new ArrayList<>();
    int end = groups - 1;
    for (int run = runs - 1; run >= 0 && end >= 0; run--) {
      ends.add(0, groupEnds[end]);
      end = before[run][end];
    }
    return ends;
  }

  private double[] withOneRunMore(double[] lostM, int[] before) {
    double[] less = lostM.clone();
    Arrays.fill(before, -1);
    for (int end = 0; end < less.length; end++) {
      less[end] = lostM(0, groupEnds[end]);
      for (int cut = 0; cut < end; cut++) {
        double withCut = lostM[cut] + lostM(groupEnds[cut], groupEnds[end]);
        if (withCut < less[end]) {
          less[end] = withCut;
          before[end] = cut;
        }
      }
    }
    return less;
  }

  /** Length lost when the items from one index up to before another make one run. */
  private double lostM(int from, int to) {
    return lengthsM[to - 1] * (to - from) - (sumsM[to] - sumsM[from]);
  }
}
