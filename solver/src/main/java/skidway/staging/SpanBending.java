package skidway.staging;

import java.util.Arrays;
import skidway.limits.JoistLoad;

/**
 * The highest bending moment in a simple span under loads that all press down. Shear then falls
 * from one support to the other, and the moment peaks where it passes nil. The same as {@code Beam}
 * says, but a search asks for it a million times.
 */
final class SpanBending {
  /** Halvings of the span: the place is found to a billionth of it. */
  private static final int HALVINGS = 30;

  private double[] fromM = new double[16];
  private double[] toM = new double[16];
  private double[] forceN = new double[16];
  private int size;

  void clear() {
    size = 0;
  }

  void add(JoistLoad load, double stackN) {
    if (size == forceN.length) {
      fromM = Arrays.copyOf(fromM, 2 * size);
      toM = Arrays.copyOf(toM, 2 * size);
      forceN = Arrays.copyOf(forceN, 2 * size);
    }
    fromM[size] = load.fromM();
    toM[size] = load.toM();
    forceN[size++] = load.share() * stackN;
  }

  /** N m, in a span that begins at 0. */
  double mostNm(double spanM) {
    double leftN = 0;
    for (int i = 0; i < size; i++) {
      leftN += forceN[i] * (1 - (fromM[i] + toM[i]) / (2 * spanM));
    }
    double low = 0;
    double high = spanM;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (low + high) / 2;
      if (leftN > beforeN(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return leftN * low - turningNm(low);
  }

  /** What presses down before a place. */
  private double beforeN(double xM) {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      if (xM >= toM[i]) {
        sum += forceN[i];
      } else if (xM > fromM[i]) {
        sum += forceN[i] * (xM - fromM[i]) / (toM[i] - fromM[i]);
      }
    }
    return sum;
  }

  /** How what presses down before a place turns the span about it. */
  private double turningNm(double xM) {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      if (xM >= toM[i] || toM[i] - fromM[i] < JoistLoad.POINT_M) {
        sum += forceN[i] * Math.max(0, xM - (fromM[i] + toM[i]) / 2);
      } else if (xM > fromM[i]) {
        double metres = xM - fromM[i];
        sum += forceN[i] * metres * metres / (2 * (toM[i] - fromM[i]));
      }
    }
    return sum;
  }
}
