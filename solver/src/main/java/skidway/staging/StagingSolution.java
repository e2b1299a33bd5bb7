package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.cloner.SolutionCloner;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** What the engine works on: a placing per bundle, and the ground they are placed on. */
@PlanningSolution(solutionCloner = StagingSolution.Cloner.class)
class StagingSolution {
  /** What a search shares between all solutions it looks at. */
  record Ground(
      Board board,
      StackEvaluator evaluator,
      List<int[]> shutTogether,
      StopButton stop,
      DrawBudget draws) {
    /** The same ground for another search at the same time: nothing that changes is shared. */
    Ground apart(long calculations) {
      return new Ground(board, evaluator.apart(), shutTogether, stop, new DrawBudget(calculations));
    }

    /** The same ground where other sets of spots are known to shut paths. */
    Ground shut(List<int[]> together) {
      return new Ground(board, evaluator, together, stop, draws);
    }

    /** Nothing lies anywhere yet, not even what lies there from the start. */
    Occupancy empty() {
      Occupancy occupancy = new Occupancy(board, evaluator, shutTogether);
      occupancy.layStart();
      occupancy.clear();
      return occupancy;
    }
  }

  @PlanningEntityCollectionProperty private List<Placing> placings = List.of();

  @ValueRangeProvider(id = "spots")
  private List<Integer> spots = List.of();

  @PlanningScore private @Nullable HardMediumSoftLongScore score;

  private @Nullable Ground ground;

  /** The occupancy that the score keeps in step with this solution while it is being worked on. */
  private @Nullable Occupancy live;

  /** For the engine. */
  StagingSolution() {}

  StagingSolution(Ground ground, List<Integer> spots, int[] spotOf) {
    this.ground = ground;
    this.spots = spots;
    List<Placing> all = new ArrayList<>();
    for (int b = 0; b < spotOf.length; b++) {
      all.add(new Placing(b, spotOf[b]));
    }
    placings = all;
  }

  Ground ground() {
    return Objects.requireNonNull(ground);
  }

  Placing placing(int bundle) {
    return placings.get(bundle);
  }

  int[] spotOf() {
    return placings.stream().mapToInt(Placing::spot).toArray();
  }

  @Nullable Occupancy live() {
    return live;
  }

  void setLive(Occupancy occupancy) {
    live = occupancy;
  }

  /** Copies the decisions; the ground is shared, the live occupancy stays with the original. */
  public static class Cloner implements SolutionCloner<StagingSolution> {
    @Override
    public StagingSolution cloneSolution(StagingSolution original) {
      StagingSolution copy =
          new StagingSolution(original.ground(), original.spots, original.spotOf());
      copy.score = original.score;
      return copy;
    }
  }
}
