package skidway.staging;

import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/** Feeds the engine with moves that keep the rules, drawn from {@link Proposal}. */
public class Proposals implements MoveIteratorFactory<StagingSolution, Reassign> {
  /** Draws without a move that keeps the rules before a search is given up as stuck. */
  private static final int MOST_DRAWS = 20_000;

  @Override
  public long getSize(ScoreDirector<StagingSolution> director) {
    Board board = director.getWorkingSolution().ground().board();
    return (long) board.bundleCount() * board.spotCount();
  }

  @Override
  public Iterator<Reassign> createOriginalMoveIterator(ScoreDirector<StagingSolution> director) {
    throw new IllegalStateException("Moves are drawn at random only.");
  }

  @Override
  public Iterator<Reassign> createRandomMoveIterator(
      ScoreDirector<StagingSolution> director, Random random) {
    StagingSolution solution = director.getWorkingSolution();
    return new Draws(Objects.requireNonNull(solution.live()), solution.ground(), random);
  }

  private static final class Draws implements Iterator<Reassign> {
    private final Occupancy live;
    private final StagingSolution.Ground ground;
    private final Proposal proposal;
    private @Nullable Reassign drawn;

    Draws(Occupancy live, StagingSolution.Ground ground, Random random) {
      this.live = live;
      this.ground = ground;
      this.proposal = new Proposal(live, random);
    }

    @Override
    public boolean hasNext() {
      for (int i = 0; drawn == null && i < MOST_DRAWS && mayDraw(); i++) {
        Change change = proposal.draw();
        if (change.changes(live) && change.keepsRules(live)) {
          drawn = change.toMove();
        }
      }
      return drawn != null;
    }

    private boolean mayDraw() {
      return !ground.stop().pressed() && ground.draws().draw();
    }

    @Override
    public Reassign next() {
      if (!hasNext()) {
        throw new NoSuchElementException();
      }
      Reassign move = Objects.requireNonNull(drawn);
      drawn = null;
      return move;
    }
  }
}
