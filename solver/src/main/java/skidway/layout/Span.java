package skidway.layout;

import java.util.Arrays;

/** A stretch of one axis. */
record Span(double lowM, double highM) {
  static Span of(double[] values) {
    return new Span(Arrays.stream(values).min().orElse(0), Arrays.stream(values).max().orElse(0));
  }

  Span grown(double byM) {
    return new Span(lowM - byM, highM + byM);
  }

  boolean meets(Span other) {
    return lowM < other.highM && other.lowM < highM;
  }
}
