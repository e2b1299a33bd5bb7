package skidway.staging;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Sends some bundles to some spots at once: every domain move comes down to this. */
final class Reassign extends AbstractMove<StagingSolution> {
  private final int[] bundles;
  private final int[] targets;

  Reassign(int[] bundles, int[] targets) {
    this.bundles = bundles;
    this.targets = targets;
  }

  /** Whether any bundle would lie elsewhere than now. */
  boolean changes(Occupancy live) {
    for (int i = 0; i < bundles.length; i++) {
      if (live.spotOf(bundles[i]) != targets[i]) {
        return true;
      }
    }
    return false;
  }

  /** Whether the plan would still be within the rules; the occupancy is left as it was. */
  boolean keepsRules(Occupancy live) {
    if (isHopeless(live)) {
      return false;
    }
    int[] before = new int[bundles.length];
    for (int i = 0; i < bundles.length; i++) {
      before[i] = live.spotOf(bundles[i]);
      live.take(bundles[i]);
    }
    for (int i = 0; i < bundles.length; i++) {
      live.put(bundles[i], targets[i]);
    }
    boolean legal = live.legal();
    for (int bundle : bundles) {
      live.take(bundle);
    }
    for (int i = 0; i < bundles.length; i++) {
      live.put(bundles[i], before[i]);
    }
    return legal;
  }

  /**
   * Whether a target is refused or stands in the way of a spot that stays used: seen at a glance.
   */
  private boolean isHopeless(Occupancy live) {
    for (int i = 0; i < bundles.length; i++) {
      int target = targets[i];
      if (target == Occupancy.NOWHERE) {
        continue;
      }
      if (live.board.placeMs[bundles[i]][target] == Board.REFUSED) {
        return true;
      }
      if (live.count(target) == 0 && live.excluders(target) > vacatedAround(target, live)) {
        return true;
      }
    }
    return false;
  }

  /** How many used spots that exclude a spot this move leaves empty. */
  private int vacatedAround(int spot, Occupancy live) {
    int vacated = 0;
    for (int i = 0; i < bundles.length; i++) {
      int from = live.spotOf(bundles[i]);
      if (from != Occupancy.NOWHERE
          && live.board.exclude(from, spot)
          && isFirstFrom(from, i, live)
          && leaving(from, live) == live.count(from)) {
        vacated++;
      }
    }
    return vacated;
  }

  private boolean isFirstFrom(int from, int at, Occupancy live) {
    for (int i = 0; i < at; i++) {
      if (live.spotOf(bundles[i]) == from) {
        return false;
      }
    }
    return true;
  }

  private int leaving(int from, Occupancy live) {
    int leaving = 0;
    for (int bundle : bundles) {
      leaving += live.spotOf(bundle) == from ? 1 : 0;
    }
    return leaving;
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<StagingSolution> director) {
    StagingSolution solution = director.getWorkingSolution();
    for (int i = 0; i < bundles.length; i++) {
      if (solution.placing(bundles[i]).spot() != targets[i]) {
        return true;
      }
    }
    return false;
  }

  @Override
  protected Reassign createUndoMove(ScoreDirector<StagingSolution> director) {
    StagingSolution solution = director.getWorkingSolution();
    return new Reassign(
        bundles, Arrays.stream(bundles).map(b -> solution.placing(b).spot()).toArray());
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<StagingSolution> director) {
    StagingSolution solution = director.getWorkingSolution();
    for (int i = 0; i < bundles.length; i++) {
      Placing placing = solution.placing(bundles[i]);
      director.beforeVariableChanged(placing, "spot");
      placing.setSpot(targets[i]);
      director.afterVariableChanged(placing, "spot");
    }
  }

  @Override
  public Reassign rebase(ScoreDirector<StagingSolution> destination) {
    return this;
  }

  @Override
  public List<Placing> getPlanningEntities() {
    return List.of();
  }

  @Override
  public List<Integer> getPlanningValues() {
    return Arrays.stream(targets).boxed().toList();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Reassign that
        && Arrays.equals(bundles, that.bundles)
        && Arrays.equals(targets, that.targets);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Arrays.hashCode(bundles), Arrays.hashCode(targets));
  }

  @Override
  public String toString() {
    return Arrays.toString(bundles) + " -> " + Arrays.toString(targets);
  }
}
