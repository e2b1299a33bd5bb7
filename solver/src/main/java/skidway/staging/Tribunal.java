package skidway.staging;

import java.util.List;
import java.util.function.Predicate;
import skidway.bound.Judge;

/**
 * Judges plans that a proof comes upon, and keeps the last sound one: each is cheaper than before.
 */
final class Tribunal implements Judge {
  /** To walk through a plan takes long; after so many no other is taken for sound. */
  private static final int MOST_QUESTIONS = 400;

  private final Occupancy trial;
  private final StagingSolution.Ground ground;
  private final Predicate<Occupancy> sound;
  private Occupancy best;
  private int questions;

  /**
   * @param found the plan to begin with
   * @param ground with the sets of spots known to shut paths
   * @param sound whether a legal plan can be walked through and carried out
   */
  Tribunal(Occupancy found, StagingSolution.Ground ground, Predicate<Occupancy> sound) {
    this.best = found;
    this.ground = ground;
    this.sound = sound;
    this.trial =
        new StagingSolution.Ground(
                ground.board(), ground.evaluator(), List.of(), ground.stop(), ground.draws())
            .empty();
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
    if (!plan.legal() || questions++ >= MOST_QUESTIONS || !sound.test(plan)) {
      return Verdict.LEGAL;
    }
    best = plan;
    return Verdict.SOUND;
  }
}
