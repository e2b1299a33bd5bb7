package skidway.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks for the sets that a plan below some cost can have, going by the answer of a relaxation. */
final class Gathering {
  /** With more sets than this nobody gets to the end of their combinations. */
  private static final int MOST_COLUMNS = 60_000;

  /** How often what plans may cost above the bound is halved until the sets are few. */
  private static final int MOST_TRIES = 8;

  /** Sets looked at for one spot: a part of those that are left. */
  private static final int PART_FOR_A_SPOT = 10;

  private final Ground ground;
  private final Relaxation relaxation;
  private final Answer answer;
  private List<Column> columns = List.of();

  /**
   * @param answer at the prices of the bound
   */
  Gathering(Ground ground, Relaxation relaxation, Answer answer) {
    this.ground = ground;
    this.relaxation = relaxation;
    this.answer = answer;
  }

  /**
   * Gathers all sets of plans below some cost, or at least those of much cheaper plans.
   *
   * @param mostSteps sets to look at
   * @return nothing if even those are too many, or if the steps do not last
   */
  Optional<Pool> run(long costMs, long mostSteps) {
    long belowMs = Math.max(0, costMs - answer.valueMs);
    long left = mostSteps;
    int halved = 0;
    for (int i = 0; i < MOST_TRIES && left > 0; i++) {
      long before = relaxation.steps();
      int asked = ask(belowMs >> halved, left);
      if (asked == ground.spots()) {
        return Optional.of(Pool.of(ground, answer, costMs, columns, halved == 0));
      }
      halved += halvings(asked);
      left -= relaxation.steps() - before;
    }
    return Optional.empty();
  }

  /** The sooner they were too many, the more of them there are. */
  private int halvings(int asked) {
    int tooMany = ground.spots() / (asked + 1);
    return Math.max(1, (Integer.SIZE - Integer.numberOfLeadingZeros(tooMany)) / 2);
  }

  /** Gathers until there are too many, and says how many spots have told theirs. */
  private int ask(long belowMs, long mostSteps) {
    columns = new ArrayList<>();
    long begun = relaxation.steps();
    for (int s = 0; s < ground.spots(); s++) {
      int spot = s;
      long gainMs = answer.gainMs[s];
      long left = mostSteps - (relaxation.steps() - begun);
      boolean told =
          relaxation.tellBelow(
              spot,
              answer.prices,
              gainMs + belowMs,
              Math.max(Relaxation.FOR_A_SPOT, left / PART_FOR_A_SPOT),
              (set, valueMs) -> {
                if (columns.size() <= MOST_COLUMNS) {
                  columns.add(new Column(ground, spot, set, valueMs, gainMs));
                }
              });
      if (!told || left <= 0 || columns.size() > MOST_COLUMNS) {
        return s;
      }
    }
    return ground.spots();
  }
}
