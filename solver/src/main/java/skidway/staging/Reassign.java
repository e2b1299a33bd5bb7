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
    int[] before = new int[bundles.length];
    for (int i = 0; i < bundles.length; i++) {
      before[i] = solution.placing(bundles[i]).spot();
    }
    return new Reassign(bundles, before);
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
