package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import skidway.bound.Judge;

/**
 * Judges plans that a proof comes upon, and keeps the last sound one: each is cheaper than before.
 * What shuts a path in one plan is remembered, so that no other with the same fault is walked
 * through.
 */
final class Tribunal implements Judge {
  /** To walk through a plan takes long; after so many no other is taken for sound. */
  private static final int MOST_QUESTIONS = 400;

  /** Each time more is known of what shuts a path. */
  private static final int MOST_POLISHES = 5;

  private final Occupancy trial;
  private final Function<Occupancy, List<int[]>> shut;
  private final Predicate<Occupancy> carriedOut;
  private StagingSolution.Ground ground;
  private Occupancy best;
  private int questions;

  /**
   * @param found the plan to begin with
   * @param ground with the sets of spots known to shut paths
   * @param shut sets of spots that together shut a path in a legal plan
   * @param carriedOut whether it can be carried out
   */
  Tribunal(
      Occupancy found,
      StagingSolution.Ground ground,
      Function<Occupancy, List<int[]>> shut,
      Predicate<Occupancy> carriedOut) {
    this.best = found;
    this.ground = ground;
    this.shut = shut;
    this.carriedOut = carriedOut;
    this.trial = ground.shut(List.of()).empty();
  }

  Occupancy best() {
    return best;
  }

  @Override
  public Verdict verdict(int[] spotOf) {
    trial.restore(spotOf);
    if (!trial.legal()) {
      return Verdict.ILLEGAL;
    }
    Occupancy plan = ground.empty();
    plan.restore(spotOf);
    boolean open = plan.legal() && questions++ < MOST_QUESTIONS;
    if (!open || !canBeWalked(plan) || !carriedOut.test(plan)) {
      return Verdict.LEGAL;
    }
    best = plan;
    return Verdict.SOUND;
  }

  /** Improves the best plan bundle by bundle: sets that go together leave such moves undone. */
  void polish() {
    for (int i = 0; i < MOST_POLISHES; i++) {
      Occupancy plan = ground.empty();
      plan.restore(best.snapshot());
      new Polish(plan).run();
      if (!plan.isBetterThan(best) || verdict(plan.snapshot()) == Verdict.SOUND) {
        return;
      }
    }
  }

  /** Remembers what shuts a path if something does. */
  private boolean canBeWalked(Occupancy plan) {
    List<int[]> more = shut.apply(plan);
    if (!more.isEmpty()) {
      List<int[]> all = new ArrayList<>(ground.shutTogether());
      all.addAll(more);
      ground = ground.shut(all);
    }
    return more.isEmpty();
  }
}
