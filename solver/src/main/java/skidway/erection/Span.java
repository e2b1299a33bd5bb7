package skidway.erection;

import java.util.List;
import java.util.stream.Stream;

/** A stretch of a wall, in metres from the wall's start. */
record Span(double fromM, double toM) {
  /**
   * Shorter than this, a timber does not bear and a gap is none: what cutting and a tape leave open
   * at a joint (assumption).
   */
  static final double SLIVER_M = 0.02;

  /** The part that both share; of negative length when they share nothing. */
  Span shared(Span other) {
    return new Span(Math.max(fromM, other.fromM), Math.min(toM, other.toM));
  }

  /** What is left of this stretch without the other one, slivers dropped. */
  List<Span> without(Span other) {
    return Stream.of(
            new Span(fromM, Math.min(toM, other.fromM)), new Span(Math.max(fromM, other.toM), toM))
        .filter(Span::counts)
        .toList();
  }

  boolean counts() {
    return toM - fromM > SLIVER_M;
  }
}
