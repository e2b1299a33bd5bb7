package skidway.audit.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The places a walk leads to, by the cells that stand for them, and the nearest way to each. */
final class Goals {
  private final double unitM;
  private final double[] nearestM;
  private final BitSet cells = new BitSet();
  private final Map<Integer, List<Goal>> goals = new HashMap<>();
  private double worstM = Double.POSITIVE_INFINITY;

  /** What a way through a cell has beyond it: to the point that is meant, and from there. */
  private record Goal(int place, double offM, double extraM) {}

  /**
   * @param unitM metres to one of the whole numbers that distances are told in
   */
  Goals(double unitM, int places) {
    this.unitM = unitM;
    nearestM = new double[places];
    Arrays.fill(nearestM, Double.POSITIVE_INFINITY);
  }

  void add(int cell, int place, double offM, double extraM) {
    cells.set(cell);
    goals.computeIfAbsent(cell, c -> new ArrayList<>()).add(new Goal(place, offM, extraM));
  }

  /** Takes note of a cell's own distance, told once. */
  void reached(int cell, int distance) {
    if (!cells.get(cell)) {
      return;
    }
    cells.clear(cell);
    for (Goal goal : goals.getOrDefault(cell, List.of())) {
      double throughM = distance * unitM + goal.offM() + goal.extraM();
      nearestM[goal.place()] = Math.min(nearestM[goal.place()], throughM);
    }
    worstM = Arrays.stream(nearestM).max().orElse(0);
  }

  /** Whether no cell from this distance on makes any way shorter. */
  boolean settledBy(int distance) {
    return cells.isEmpty() || distance * unitM >= worstM;
  }

  double[] nearestM() {
    return nearestM.clone();
  }
}
