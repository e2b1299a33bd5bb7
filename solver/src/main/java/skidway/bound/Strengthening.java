package skidway.bound;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Raises the bound of a pool by rivals: those that its relaxation takes too often are charged, the
 * bound rises again, sets that no cheaper plan can have any longer are dropped, and so on.
 */
final class Strengthening {
  /** Steps upwards between two looks for rivals. */
  private static final int CLIMBS = 300;

  private static final int MOST_ROUNDS = 40;

  /** Rivals charged more at a time. */
  private static final int A_ROUND = 60;

  /** So many rounds in a row that raise the bound by less than {@link #LITTLE} are the last. */
  private static final int PATIENCE = 6;

  /** Of the gap that is left. */
  private static final double LITTLE = 0.01;

  private final Ground ground;
  private final Pool pool;
  private final Clashes clashes;
  private final PoolRelaxation relaxation;
  private Prices prices;
  private long boundMs;
  private int[] sets;

  /**
   * @param pool that lacks no set
   */
  Strengthening(Ground ground, Cliques cliques, Pool pool) {
    this.ground = ground;
    this.pool = pool;
    this.clashes = new Clashes(ground);
    this.relaxation = new PoolRelaxation(ground, cliques, pool);
    this.prices = pool.prices;
    this.boundMs = pool.boundMs;
    this.sets = IntStream.range(0, pool.columns.size()).toArray();
  }

  /** The pool that is left, its sets priced anew. */
  Pool run(long mostSteps, BooleanSupplier stopped) {
    int little = 0;
    for (int round = 0; round < MOST_ROUNDS && little < PATIENCE && sets.length > 0; round++) {
      long gapMs = pool.costMs - boundMs;
      little = climb() < LITTLE * gapMs ? little + 1 : 0;
      List<BitSet> found = relaxation.takenTooOften(clashes, A_ROUND);
      sets = boundMs < pool.costMs ? relaxation.below(pool.costMs, prices) : new int[0];
      if (found.isEmpty() || relaxation.steps() > mostSteps || stopped.getAsBoolean()) {
        break;
      }
      relaxation.charge(found);
      prices = prices.grown(found.size());
    }
    return left();
  }

  /** Raises the bound, and says by how much. */
  private long climb() {
    relaxation.restrict(sets);
    DualAscent ascent = new DualAscent(relaxation, prices, DualAscent.STEADY);
    ascent.climb(pool.costMs, CLIMBS);
    long raisedMs = Math.max(0, ascent.bestMs() - boundMs);
    boundMs += raisedMs;
    prices = ascent.best();
    return raisedMs;
  }

  private Pool left() {
    if (sets.length == 0) {
      return pool.priced(ground, Math.max(boundMs, pool.costMs), List.of(), prices, List.of());
    }
    relaxation.restrict(sets);
    long valueMs = relaxation.valueMs(prices, new double[prices.ms.length]);
    return pool.priced(ground, valueMs, relaxation.priced(), prices, rivals());
  }

  /** The rivals by places among the sets that are left. */
  private List<BitSet> rivals() {
    List<BitSet> rivals = new ArrayList<>();
    for (BitSet members : relaxation.rivals()) {
      BitSet places = new BitSet(sets.length);
      IntStream.range(0, sets.length).filter(i -> members.get(sets[i])).forEach(places::set);
      rivals.add(places);
    }
    return rivals;
  }
}
