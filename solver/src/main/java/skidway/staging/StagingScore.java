package skidway.staging;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.calculator.IncrementalScoreCalculator;

/**
 * Scores a staging while it changes. Hard: rules broken by stacks, spots too near each other, paths
 * shut. Medium: bundles without a spot. Soft: crew time in person-milliseconds.
 */
public class StagingScore
    implements IncrementalScoreCalculator<StagingSolution, HardMediumSoftLongScore> {
  private @Nullable Occupancy occupancy;

  @Override
  public void resetWorkingSolution(StagingSolution solution) {
    Occupancy fresh = solution.ground().empty();
    fresh.restore(solution.spotOf());
    if (solution.live() == null) {
      solution.setLive(fresh);
    }
    occupancy = fresh;
  }

  @Override
  public void beforeVariableChanged(Object entity, String variableName) {
    occupancy().take(((Placing) entity).bundle());
  }

  @Override
  public void afterVariableChanged(Object entity, String variableName) {
    Placing placing = (Placing) entity;
    occupancy().put(placing.bundle(), placing.spot());
  }

  @Override
  public HardMediumSoftLongScore calculateScore() {
    Occupancy now = occupancy();
    return HardMediumSoftLongScore.of(-now.brokenRules(), -now.unplaced(), -now.costMs());
  }

  private Occupancy occupancy() {
    return Objects.requireNonNull(occupancy);
  }

  @Override
  public void beforeEntityAdded(Object entity) {
    throw bundlesAreFixed();
  }

  @Override
  public void afterEntityAdded(Object entity) {
    throw bundlesAreFixed();
  }

  @Override
  public void beforeEntityRemoved(Object entity) {
    throw bundlesAreFixed();
  }

  @Override
  public void afterEntityRemoved(Object entity) {
    throw bundlesAreFixed();
  }

  private static IllegalStateException bundlesAreFixed() {
    return new IllegalStateException("The bundles of a search are fixed.");
  }
}
