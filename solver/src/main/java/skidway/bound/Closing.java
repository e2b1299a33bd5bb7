package skidway.bound;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Looks at all plans that may be cheaper than a known one, part by part: a bundle lies on one of
 * the spots up to some number, or on a later one. Each part has its own bound; the part with the
 * lowest is split next, so that the lowest of all that are left holds for every plan.
 */
final class Closing {
  /** Steps upwards for the bound of a part. */
  private static final int CLIMBS = 40;

  /** With so few sets left in a part its plans are looked at one by one. */
  static final int FEW = 400;

  /** Sets looked at for that before it is split all the same. */
  private static final long A_PART = 20_000;

  /** Some of the sets, and what every plan of them costs at least. */
  private static final class Part {
    final int[] sets;
    final long boundMs;
    final Prices prices;

    /** Parts are numbered as they are made. */
    final int number;

    Part(int[] sets, long boundMs, Prices prices, int number) {
      this.sets = sets;
      this.boundMs = boundMs;
      this.prices = prices;
      this.number = number;
    }
  }

  private final Ground ground;
  private final int moments;
  private final Pool pool;
  private final PoolRelaxation relaxation;
  private final Judge judge;
  private final Clashes clashes;
  private final int few;
  private final PriorityQueue<Part> parts =
      new PriorityQueue<>(
          Comparator.comparingLong((Part part) -> part.boundMs)
              .thenComparingInt(part -> part.number));

  private final long knownMs;
  private long bestMs;
  private long rejectedMs = Long.MAX_VALUE;

  /** The least bound of parts that can neither be split nor looked at to the end. */
  private long stuckMs = Long.MAX_VALUE;

  private long steps;
  private int parted;
  private int looked;

  /**
   * @param few sets of a part that are few enough to look at their plans one by one
   * @param costMs of the known plan
   */
  Closing(
      Ground ground, Cliques cliques, int moments, Pool pool, int few, long costMs, Judge judge) {
    this.ground = ground;
    this.moments = moments;
    this.pool = pool;
    this.judge = judge;
    this.clashes = new Clashes(ground);
    this.few = few;
    this.knownMs = costMs;
    this.bestMs = costMs;
    this.relaxation = new PoolRelaxation(ground, cliques, pool);
    int[] all = IntStream.range(0, pool.columns.size()).toArray();
    parts.add(new Part(all, pool.boundMs, pool.prices, 0));
  }

  /** Goes on until no part is left, the steps are spent or it is stopped. */
  void run(long mostSteps, BooleanSupplier stopped) {
    while (pool.complete && !parts.isEmpty() && steps < mostSteps && !stopped.getAsBoolean()) {
      Part part = parts.remove();
      if (part.boundMs < bestMs) {
        look(part);
      }
      steps += 1;
    }
  }

  /** What every plan costs at least, as far as that is known. */
  long provenMs() {
    long open = parts.isEmpty() ? Long.MAX_VALUE : parts.peek().boundMs;
    long least = Math.min(Math.min(open, stuckMs), Math.min(bestMs, rejectedMs));
    long begunMs = Math.min(pool.boundMs, knownMs);
    return pool.complete ? Math.max(begunMs, least) : begunMs;
  }

  private void look(Part part) {
    relaxation.restrict(part.sets);
    DualAscent ascent = new DualAscent(relaxation, part.prices);
    long before = relaxation.steps();
    ascent.climb(bestMs, CLIMBS);
    steps += relaxation.steps() - before;
    long boundMs = Math.max(part.boundMs, ascent.bestMs());
    if (boundMs >= bestMs) {
      return;
    }
    int[] weights = relaxation.taken();
    int[] kept = relaxation.below(bestMs, ascent.best());
    if (kept.length <= few && finished(kept)) {
      return;
    }
    if (isPowerOfTwo(++looked)) {
      plunge(kept, ascent.best());
      kept = relaxation.below(bestMs, ascent.best());
    }
    split(
        new Part(kept, boundMs, ascent.best(), 0),
        Split.of(ground, pool, part.sets, weights, kept));
  }

  private static boolean isPowerOfTwo(int number) {
    return Integer.bitCount(number) == 1;
  }

  private void split(Part part, Optional<Split> split) {
    if (split.isEmpty()) {
      stuckMs = finished(part.sets) ? stuckMs : Math.min(stuckMs, part.boundMs);
      return;
    }
    add(part, c -> split.get().mayBeFirst(c));
    add(part, c -> split.get().mayBeSecond(c));
  }

  private void add(Part whole, Predicate<Column> inPart) {
    int[] sets = IntStream.of(whole.sets).filter(c -> inPart.test(pool.columns.get(c))).toArray();
    parts.add(new Part(sets, whole.boundMs, whole.prices, ++parted));
  }

  /** A cheaper plan makes all parts smaller: looked for often at first and ever less. */
  private void plunge(int[] sets, Prices prices) {
    long before = relaxation.steps();
    finished(new Plunge(pool, relaxation, clashes).run(sets, prices, bestMs, few));
    steps += relaxation.steps() - before;
    relaxation.restrict(sets);
  }

  private boolean finished(int[] sets) {
    List<Column> columns = IntStream.of(sets).mapToObj(pool.columns::get).toList();
    List<List<Column>> ofBundle = Pool.byBundle(ground, columns);
    Completion completion =
        new Completion(new Assembly(ground, moments), ofBundle, pool.boundMs, judge);
    boolean all = completion.run(bestMs, A_PART);
    steps += completion.steps();
    bestMs = completion.bestMs();
    rejectedMs = Math.min(rejectedMs, completion.rejectedMs());
    return all;
  }
}
