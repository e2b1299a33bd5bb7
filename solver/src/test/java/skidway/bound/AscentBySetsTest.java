package skidway.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * All sets of small problems are known, so the ascent and what it asks can be held against them.
 */
class AscentBySetsTest {
  private static final int SPOTS = 70;
  private static final int CASES = 40;

  static IntStream seeds() {
    return IntStream.range(0, CASES);
  }

  /** Fewer bundles than spots, and so many spots that parts of them are asked. */
  private static final class Case {
    final int moments;
    final RandomGround ground;
    final Cliques cliques;
    final Relaxation relaxation;
    final KnownSets known;
    final AllSets all;
    final Random random;
    final Answer start;

    Case(int seed, int spots) {
      moments = 1 + seed % 3;
      random = new Random(seed);
      ground = new RandomGround(random, 5, spots, moments);
      cliques = Cliques.of(ground);
      Openings openings = Openings.of(ground, (b, s) -> true);
      relaxation = new Relaxation(ground, cliques, openings, moments, 0);
      known = new KnownSets(ground, cliques, 0);
      all = new AllSets(ground, cliques, moments);
      start = relaxation.ask(relaxation.start(openings), Long.MAX_VALUE);
    }

    Answer raised(long aimMs, long mostSteps) {
      KnownSets none = new KnownSets(ground, cliques, 0);
      AscentBySets ascent = new AscentBySets(relaxation, none, start);
      ascent.run(aimMs, mostSteps, () -> false);
      return ascent.best();
    }

    Prices anyPrices() {
      Prices prices = start.prices.copy();
      for (int i = 0; i < prices.ms.length; i++) {
        prices.ms[i] = random.nextInt(prices.isCharge(i) ? 300 : 1500);
      }
      return prices;
    }

    List<Column> on(int spot) {
      return all.columns().stream().filter(c -> c.spot == spot).toList();
    }
  }

  @Test
  void theBoundComesNearTheHighestThereIsAndNeverAboveIt() {
    double sum = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Case job = new Case(seed, SPOTS);
      double linearMs = job.all.linearMs();
      double share = job.raised((long) (1.2 * linearMs), 1_000_000).valueMs / linearMs;
      assertThat(share).isBetween(0.8, 1 + 1e-6);
      sum += share;
    }
    assertThat(sum / CASES).isGreaterThan(0.98);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatIsProvenIsWhatAllSpotsAnswerHoweverFewStepsThereAre(int seed) {
    for (long steps : new long[] {0, 300, 3_000}) {
      Case job = new Case(seed, SPOTS);
      Answer best = job.raised(100_000, steps);
      assertThat(best.valueMs).isGreaterThanOrEqualTo(job.start.valueMs);
      assertThat(job.relaxation.ask(best.prices, Long.MAX_VALUE).valueMs).isEqualTo(best.valueMs);
    }
  }

  @Test
  void itEndsWhenThereIsNothingToGain() {
    Case job = new Case(3, SPOTS);
    long highestMs = job.raised(100_000, 1_000_000).valueMs;
    assertThat(job.raised(100_000, Long.MAX_VALUE).valueMs).isEqualTo(highestMs);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aSpotThatIsAskedGainsAsMuchAsItsBestSet(int seed) {
    Case job = new Case(seed, 6);
    Prices prices = job.anyPrices();
    for (int s = 0; s < 6; s++) {
      long leastMs = job.on(s).stream().mapToLong(c -> job.all.valueMs(c, prices)).min().orElse(0);
      assertThat(job.relaxation.gainMs(s, prices, Long.MAX_VALUE))
          .isBetween(Math.min(0, leastMs) - 2, Math.min(0, leastMs) + 2);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whoKnowsAllSetsAnswersAsIfAllWereAsked(int seed) {
    Case job = new Case(seed, 6);
    Prices prices = job.anyPrices();
    for (Column column : job.all.columns()) {
      assertThat(job.known.add(column.spot, column.set, prices)).isTrue();
      assertThat(job.known.add(column.spot, column.set, prices)).isFalse();
    }
    assertThat(job.known.valueMs(prices, new double[prices.ms.length]))
        .isCloseTo(job.relaxation.ask(prices, Long.MAX_VALUE).valueMs, Offset.offset(20L));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void allSetsOfCheaperPlansAreGathered(int seed) {
    Case job = new Case(seed, 6);
    Answer answer = job.relaxation.ask(job.anyPrices(), Long.MAX_VALUE);
    long moreMs = 400;
    Pool pool =
        new Gathering(job.ground, job.relaxation, answer)
            .run(answer.valueMs + moreMs, Long.MAX_VALUE)
            .orElseThrow();
    assertThat(pool.complete).isTrue();
    // What a toll rounds must not decide who is in.
    List<String> must =
        job.all.columns().stream()
            .filter(c -> job.all.valueMs(c, answer.prices) - answer.gainMs[c.spot] < moreMs - 2)
            .map(AscentBySetsTest::name)
            .toList();
    assertThat(pool.columns).extracting(AscentBySetsTest::name).containsAll(must);
    assertThat(pool.columns).allMatch(c -> c.excessMs < moreMs);
    assertThat(pool.columns).isSortedAccordingTo(Comparator.comparingInt(c -> c.spot));
  }

  @Test
  void withoutStepsNothingIsGathered() {
    Case job = new Case(1, 6);
    Gathering gathering = new Gathering(job.ground, job.relaxation, job.start);
    assertThat(gathering.run(job.start.valueMs + 400, 0)).isEmpty();
  }

  private static String name(Column column) {
    return column.spot + Arrays.toString(column.set);
  }
}
