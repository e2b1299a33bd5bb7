package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;
import skidway.bound.LowerBound;
import skidway.plan.Proof;
import skidway.plan.StepKind;

/**
 * Proves beside a search how good a plan can be at best. How far it gets is told by a count of sets
 * looked at, in proportion to what the search may spend; so a slow machine proves the same.
 */
final class Proving {
  /**
   * Sets of bundles looked at while the search runs, for each of its score calculations: more than
   * enough for some hundred bundles, who are done earlier. They are looked at in parts, and after
   * one that gained little no other begins, so that a plan does not wait for what cannot be proven.
   */
  private static final int BESIDE = 100;

  /** Calculations of the search for which one part looks at sets. */
  private static final int ONE_PART = 100_000;

  /** What part of the gap one of them must close for another to begin. */
  private static final double ENOUGH = 0.25;

  /** Sets looked at for each calculation when the search is done and the plan's cost is known. */
  private static final int AFTER = 10;

  /** With more bundles a set takes so much longer that fewer are looked at, beside and after. */
  private static final int MANY = 400;

  /** Sets looked at to find those that a cheaper plan can have. */
  private static final int GATHERING = 10;

  /** Sets looked at to make the plan cheaper, for each score calculation of the search. */
  private static final int MENDING = 10;

  /** Sets looked at to close the gap, for each score calculation of the search. */
  private static final int CLOSING = 80;

  /**
   * Each round of mending and closing begins from the plan that the one before came upon; one that
   * finds nothing is the last.
   */
  private static final int ROUNDS = 3;

  private final Board board;
  private final SearchLimits limits;
  private final StopButton stop;
  private @Nullable CompletableFuture<LowerBound> bound;
  private boolean tolerant;

  Proving(Board board, SearchLimits limits, StopButton stop) {
    this.board = board;
    this.limits = limits;
    this.stop = stop;
  }

  /** Begins, knowing some plan. */
  void begin(Occupancy known) {
    tolerant = known.isTolerant();
    long aimMs = known.costMs();
    int mayLeave = known.unplaced();
    bound = CompletableFuture.supplyAsync(() -> beside(aimMs, mayLeave));
  }

  private LowerBound beside(long aimMs, int mayLeave) {
    LowerBound begun = new LowerBound(new BoundGround(board, tolerant), board.moments, mayLeave);
    long left = limits.calculations();
    for (boolean enough = true; enough && left > 0 && !stop.pressed(); left -= ONE_PART) {
      long gapMs = aimMs - begun.provenMs();
      begun.raise(aimMs, raising(BESIDE, Math.min(left, ONE_PART)), stop::pressed);
      enough = aimMs - begun.provenMs() < (1 - ENOUGH) * gapMs;
    }
    return begun;
  }

  private long raising(int forEach, long calculations) {
    long most = forEach * calculations;
    return most * MANY / Math.max(MANY, board.bundleCount());
  }

  /**
   * Goes on from the plan that was found, and returns it or a cheaper one.
   *
   * @param tribunal judges cheaper plans, and holds the plan that was found
   */
  Occupancy close(Tribunal tribunal) {
    Occupancy found = tribunal.best();
    LowerBound proven = joined();
    proven.mayLeave(found.unplaced());
    if (proven.provenMs() >= found.costMs() || stop.pressed()) {
      return found;
    }
    proven.raise(found.costMs(), raising(AFTER, limits.calculations()), stop::pressed);
    boolean better = true;
    for (int i = 0; i < ROUNDS && better && isOpen(proven, tribunal); i++) {
      long before = tribunal.best().costMs();
      mend(proven, tribunal);
      close(proven, tribunal);
      better = tribunal.best().costMs() < before;
    }
    return tribunal.best();
  }

  private void mend(LowerBound proven, Tribunal tribunal) {
    Occupancy plan = tribunal.best();
    gather(proven, plan);
    proven.mend(
        plan.snapshot(), plan.costMs(), MENDING * limits.calculations(), stop::pressed, tribunal);
    tribunal.polish();
  }

  private void close(LowerBound proven, Tribunal tribunal) {
    if (isOpen(proven, tribunal)) {
      gather(proven, tribunal.best());
      proven.close(
          tribunal.best().costMs(), CLOSING * limits.calculations(), stop::pressed, tribunal);
    }
  }

  /** The cheaper the known plan, the fewer sets count. */
  private void gather(LowerBound proven, Occupancy plan) {
    proven.gather(plan.costMs(), GATHERING * limits.calculations(), stop::pressed);
  }

  private boolean isOpen(LowerBound proven, Tribunal tribunal) {
    return !stop.pressed() && proven.provenMs() < tribunal.best().costMs();
  }

  /** What is proven of a plan in the end; nothing if it places nothing. */
  Optional<Proof> proof(Occupancy plan, List<Unloading.Lift> lifts) {
    LowerBound proven = joined();
    return proven.provenMs() <= 0
        ? Optional.empty()
        : Optional.of(
            new Proof(
                Efforts.seconds(proven.provenMs()),
                Efforts.seconds(plan.costMs()),
                ignored(lifts)));
  }

  private LowerBound joined() {
    try {
      return Objects.requireNonNull(bound).join();
    } catch (CompletionException e) {
      throw new IllegalStateException("Proving failed.", e.getCause());
    }
  }

  private List<Proof.Ignored> ignored(List<Unloading.Lift> lifts) {
    List<Proof.Ignored> ignored =
        new ArrayList<>(List.of(Proof.Ignored.PATHS, Proof.Ignored.WAITING));
    if (lifts.stream().anyMatch(lift -> lift.kind() == StepKind.LIFT_ON)) {
      ignored.add(Proof.Ignored.DRIVES);
    }
    if (board.shared.count() > 0 && (tolerant || board.moments > 1)) {
      ignored.add(Proof.Ignored.SHARED_LIMITS);
    }
    if (tolerant) {
      ignored.add(Proof.Ignored.EXCLUSIONS);
    }
    return ignored;
  }
}
