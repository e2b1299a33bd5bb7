package skidway.bound;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A few bundles and spots with any prices at all: stacks that get cheaper or legal by what joins
 * them, spots with little room that exclude each other, sums that stacks share. What it tells of
 * sets that may grow is as tight as it may be, what it tells of bundles on each other is all that
 * some stacks cost.
 */
final class RandomGround implements Ground {
  private static final int MOST_MS = 1000;

  private final long[][] placeMs;
  private final long[] leastMs;
  private final long[] there;
  private final boolean[][] excludes;

  /** By spot and set of bundles, a bit each. */
  private final long[][] stackMs;

  /** By spot, bundle and what is beneath it. */
  private final long[][][] onTopMs;

  private final double[] room;
  private final double[] takes;
  private final Load[][] loads;
  private final int sums;

  RandomGround(Random random, int bundles, int spots, int moments) {
    placeMs = new long[bundles][spots];
    leastMs = random.ints(bundles, 0, MOST_MS / 10).asLongStream().toArray();
    there =
        IntStream.range(0, bundles)
            .mapToLong(b -> 1 + random.nextInt((1 << moments) - 1))
            .toArray();
    for (long[] row : placeMs) {
      Arrays.setAll(row, s -> random.nextInt(5) == 0 ? REFUSED : random.nextInt(MOST_MS));
    }
    excludes = new boolean[spots][spots];
    stackMs = new long[spots][1 << bundles];
    onTopMs = new long[spots][bundles][bundles];
    loads = new Load[spots][bundles];
    takes = random.doubles(bundles, 0, 1).toArray();
    room = new double[spots];
    Arrays.setAll(
        room,
        s -> random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : 0.3 + 2 * random.nextDouble());
    sums = random.nextInt(3);
    for (int s = 0; s < spots; s++) {
      for (int t = 0; t < s; t++) {
        excludes[s][t] = random.nextInt(3) == 0;
        excludes[t][s] = excludes[s][t];
      }
      for (long[] row : onTopMs[s]) {
        Arrays.setAll(row, b -> random.nextInt(5) == 0 ? REFUSED : random.nextInt(MOST_MS / 3));
      }
      for (int set = 1; set < 1 << bundles; set++) {
        boolean alone = Integer.bitCount(set) == 1;
        long together = inLeastOrderMs(s, set);
        stackMs[s][set] =
            together == REFUSED || !fits(s, set) || (!alone && random.nextInt(4) == 0)
                ? REFUSED
                : leastMs(set)
                    + together
                    + (random.nextBoolean() ? 0 : random.nextInt(MOST_MS / 3));
      }
      for (int b = 0; b < bundles; b++) {
        loads[s][b] =
            new Load(IntStream.range(0, sums).toArray(), random.doubles(sums, 0, 0.004).toArray());
      }
    }
  }

  private long leastMs(int set) {
    return IntStream.range(0, leastMs.length)
        .filter(b -> (set >> b & 1) == 1)
        .mapToLong(b -> leastMs[b])
        .sum();
  }

  private boolean fits(int spot, int set) {
    double taken =
        IntStream.range(0, takes.length)
            .filter(b -> (set >> b & 1) == 1)
            .mapToDouble(b -> takes[b])
            .sum();
    return taken <= room[spot];
  }

  /** By trying every bundle of a set on top of the others. */
  long inLeastOrderMs(int spot, int set) {
    long least = set == 0 ? 0 : REFUSED;
    for (int left = set; left != 0; left &= left - 1) {
      int top = Integer.numberOfTrailingZeros(left);
      int below = set ^ 1 << top;
      long beneath = inLeastOrderMs(spot, below);
      long[] row = onTopMs[spot][top];
      boolean lies =
          IntStream.range(0, row.length).noneMatch(b -> (below >> b & 1) == 1 && row[b] == REFUSED);
      if (beneath != REFUSED && lies) {
        long dearest =
            IntStream.range(0, row.length)
                .filter(b -> (below >> b & 1) == 1)
                .mapToLong(b -> row[b])
                .max()
                .orElse(0);
        least = least == REFUSED ? beneath + dearest : Math.min(least, beneath + dearest);
      }
    }
    return least;
  }

  private static int bits(int[] set, int size) {
    return Arrays.stream(set, 0, size).map(b -> 1 << b).sum();
  }

  @Override
  public int bundles() {
    return placeMs.length;
  }

  @Override
  public int spots() {
    return stackMs.length;
  }

  @Override
  public long there(int bundle) {
    return there[bundle];
  }

  @Override
  public long placeMs(int bundle, int spot) {
    return placeMs[bundle][spot];
  }

  @Override
  public int[] excludes(int spot) {
    return IntStream.range(0, spots()).filter(t -> excludes[spot][t]).toArray();
  }

  @Override
  public long leastInStackMs(int bundle, int spot) {
    return leastMs[bundle];
  }

  @Override
  public int sums() {
    return sums;
  }

  @Override
  public Load load(int spot, int lowest) {
    return loads[spot][lowest];
  }

  @Override
  public int sizeOf(int bundle) {
    return bundle;
  }

  @Override
  public double massKg(int bundle) {
    return 100 + bundle;
  }

  @Override
  public int lowest(int[] set, int size, int spot) {
    return set[spot % size];
  }

  @Override
  public double room(int spot) {
    return room[spot];
  }

  @Override
  public double takes(int bundle, int spot) {
    return takes[bundle];
  }

  @Override
  public long onTopMs(int beneath, int bundle, int spot) {
    return onTopMs[spot][bundle][beneath];
  }

  @Override
  public boolean mayGrow(int[] set, int size, int spot) {
    int bits = bits(set, size);
    return IntStream.range(1, stackMs[spot].length)
        .anyMatch(more -> (more & bits) == bits && stackMs[spot][more] != REFUSED);
  }

  @Override
  public long stackMs(int[] set, int size, int spot) {
    return stackMs[spot][bits(set, size)];
  }
}
