package skidway.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The sets of bundles on spots that a general exact solver may choose from: those that the bound
 * leaves over, for models whose variables are whole stacks. Plans that leave out no bundle.
 */
public final class Harvest {
  /** A set of bundles on a spot and what it costs, person-milliseconds. */
  public record Sheaf(int spot, List<Integer> bundles, long costMs) {}

  private final Ground ground;
  private final Cliques cliques;
  private final Pool pool;

  private Harvest(Ground ground, Cliques cliques, Pool pool) {
    this.ground = ground;
    this.cliques = cliques;
    this.pool = pool;
  }

  /**
   * Raises a bound and gathers the sets that a plan cheaper than a known one can have, and no more
   * than a share dearer than the bound.
   *
   * @param costMs of the known plan
   * @param enough ends the raising
   */
  public static Harvest of(
      Ground ground, int moments, long costMs, double share, BooleanSupplier enough) {
    Cliques cliques = Cliques.of(ground);
    Openings openings = Openings.of(ground, (b, s) -> true);
    Relaxation relaxation = new Relaxation(ground, cliques, openings, moments, 0);
    KnownSets known = new KnownSets(ground, cliques, 0);
    Answer start = relaxation.ask(relaxation.start(openings), Long.MAX_VALUE);
    AscentBySets ascent = new AscentBySets(relaxation, known, start);
    ascent.run(costMs, Long.MAX_VALUE, enough);
    Answer answer = ascent.best();
    long belowMs = Math.min(costMs, (long) (answer.valueMs * (1 + share)));
    Pool pool =
        new Gathering(ground, relaxation, answer)
            .run(belowMs, Long.MAX_VALUE)
            .orElseGet(
                () ->
                    Pool.of(
                        ground,
                        answer,
                        belowMs,
                        known.columns(answer, belowMs - answer.valueMs),
                        false));
    return new Harvest(ground, cliques, pool);
  }

  public List<Sheaf> sheaves() {
    return pool.columns.stream()
        .map(c -> new Sheaf(c.spot, IntStream.of(c.set).boxed().toList(), c.costMs))
        .toList();
  }

  /** The set that a plan has on a spot. */
  public Sheaf sheaf(int spot, List<Integer> bundles) {
    int[] set = bundles.stream().sorted().mapToInt(Integer::intValue).toArray();
    return new Sheaf(spot, bundles, new Column(ground, spot, set, 0, 0).costMs);
  }

  /** Groups of spots of which one is used at most. */
  public List<List<Integer>> groups() {
    List<List<Integer>> groups = new ArrayList<>();
    IntStream.range(0, cliques.count()).forEach(g -> groups.add(new ArrayList<>()));
    for (int s = 0; s < ground.spots(); s++) {
      for (int g : cliques.ofSpot(s)) {
        groups.get(g).add(s);
      }
    }
    return groups;
  }
}
