package skidway.shakeout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Compares the search with the proven best of the waves it chooses among: 24 pieces of six bundles,
 * two places for piles of up to ten layers.
 */
class WaveSearchTest {
  private static final int PLACES = 2;
  private static final int PIECES = 24;

  @Test
  void aWaveSavesAsMuchAsTheBestThereIs() {
    assertSaves(3, 1);
  }

  @ParameterizedTest
  @CsvSource({"1, 0.75", "2, 0.9"})
  @Tag("long")
  void aWaveSavesNearlyAsMuchAsTheBestThereIs(long seed, double share) {
    assertSaves(seed, share);
  }

  /**
   * @param share of the most that can be saved: so much the search finds at least
   */
  private static void assertSaves(long seed, double share) {
    MixedHouse house = MixedHouse.of(seed, 0);
    Timbers timbers = new Timbers(house.task(), house.plan());
    Room room = new Room(timbers, house.plan());
    WaveSearch search = new WaveSearch(timbers, room);
    double[] heightsM = few(room.heightsM(0, PIECES));
    long mostMs = -ExactWave.leastMs(timbers, room, 0, PIECES, heightsM);
    long straightMs = search.straight(0, PIECES).cost().totalMs();
    WaveDraft none = search.straight(0, 0);
    long foundMs = search.best(none, PIECES, PIECES, heightsM, Map.of()).cost().totalMs();
    assertThat(mostMs).isPositive();
    assertThat(straightMs - foundMs).isBetween((long) (share * mostMs), mostMs);
  }

  /** Some places far from each other, the others closed. */
  private static double[] few(double[] heightsM) {
    int[] open = IntStream.range(0, heightsM.length).filter(p -> heightsM[p] > 0).toArray();
    double[] some = new double[heightsM.length];
    for (int k = 0; k < PLACES; k++) {
      int p = open[k * open.length / PLACES];
      some[p] = heightsM[p];
    }
    return some;
  }
}
