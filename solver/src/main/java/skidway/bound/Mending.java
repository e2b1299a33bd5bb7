package skidway.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Makes a plan cheaper out of the sets that a bound leaves over: takes a few neighbouring stacks
 * apart again and again and puts their bundles together in the best way there is (large
 * neighbourhood search, Shaw, CP 1998, from memory; the exact part is {@link Completion}).
 */
final class Mending {
  /** Bundles that are taken off at once, at least and at most. */
  private static final int FEWEST = 4;

  private static final int MOST = 16;

  /** Sets looked at for one try. */
  private static final long A_TRY = 20_000;

  /** Any dice will do; these are the same in every run. */
  private static final long DICE = 11;

  private final Pool pool;
  private final Judge judge;
  private final Assembly assembly;
  private final Clashes clashes;
  private final Random random = new Random(DICE);
  private long costMs;
  private long steps;

  /**
   * @param spotOf the plan to begin with: the spot of each bundle
   * @param costMs what it costs
   */
  Mending(Ground ground, int moments, Pool pool, int[] spotOf, long costMs, Judge judge) {
    this.pool = pool;
    this.judge = judge;
    this.costMs = costMs;
    this.clashes = new Clashes(ground);
    this.assembly = new Assembly(ground, moments);
    for (int s = 0; s < ground.spots(); s++) {
      int spot = s;
      int[] set = IntStream.range(0, spotOf.length).filter(b -> spotOf[b] == spot).toArray();
      if (set.length > 0) {
        assembly.add(known(ground, spot, set));
      }
    }
  }

  /** A set of the plan to begin with need not be among those below its cost. */
  private Column known(Ground ground, int spot, int[] set) {
    return pool.ofBundle.get(set[0]).stream()
        .filter(c -> c.spot == spot && Arrays.equals(c.set, set))
        .findFirst()
        .orElseGet(() -> new Column(ground, spot, set, 0, 0));
  }

  /** Goes on until the steps are spent or it is stopped; returns what the plan costs then. */
  long run(long mostSteps, BooleanSupplier stopped) {
    while (steps < mostSteps && costMs > pool.boundMs && !stopped.getAsBoolean()) {
      attempt();
    }
    return costMs;
  }

  private void attempt() {
    List<Column> off = takeOff(FEWEST + random.nextInt(MOST - FEWEST + 1));
    Completion completion = new Completion(assembly, open(), pool.boundMs, judge);
    completion.run(costMs, A_TRY);
    steps += pool.ofBundle.size() + completion.steps();
    if (completion.best().isEmpty()) {
      off.forEach(assembly::add);
      return;
    }
    costMs = completion.bestMs();
    List.copyOf(assembly.columns()).forEach(assembly::remove);
    completion.best().forEach(assembly::add);
  }

  /** Draws sets that would be good to have, and takes off what is in their way. */
  private List<Column> takeOff(int bundles) {
    List<Column> off = new ArrayList<>();
    int first = random.nextInt(pool.ofBundle.size());
    for (int i = 0; i < 2 * MOST && assembly.left() < bundles; i++) {
      int bundle = i == 0 ? first : anyOf(off, first);
      List<Column> wanted = pool.ofBundle.get(bundle);
      double r = random.nextDouble();
      Column column = wanted.isEmpty() ? null : wanted.get((int) (wanted.size() * r * r));
      for (Column there : List.copyOf(assembly.columns())) {
        if (there.holds(bundle) || (column != null && clashes.clash(there, column))) {
          assembly.remove(there);
          off.add(there);
        }
      }
    }
    return off;
  }

  private int anyOf(List<Column> off, int otherwise) {
    if (off.isEmpty()) {
      return otherwise;
    }
    int[] set = off.get(random.nextInt(off.size())).set;
    return set[random.nextInt(set.length)];
  }

  /** The sets that fit in, by bundle. */
  private List<List<Column>> open() {
    return IntStream.range(0, pool.ofBundle.size())
        .mapToObj(
            b ->
                assembly.isPlaced(b)
                    ? List.<Column>of()
                    : pool.ofBundle.get(b).stream().filter(assembly::takes).toList())
        .toList();
  }
}
