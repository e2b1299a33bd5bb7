package skidway.shakeout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Counts as pieces come and go what {@link Aside} tells of all of them at once. */
class DugOutTest {
  private static final int TOGGLES = 400;

  @Test
  void whatIsMovedAsideIsCountedAsPiecesComeAndGo() {
    MixedHouse house = MixedHouse.of(2, 0);
    Timbers timbers = new Timbers(house.task(), house.plan());
    int from = 0;
    int to = timbers.count() - 3;
    boolean[] brought = new boolean[to - from];
    DugOut dugOut = new DugOut(timbers, from, to, pull -> false);
    Random random = new Random(7);
    int most = 0;
    int least = Integer.MAX_VALUE;
    for (int k = 0; k < TOGGLES; k++) {
      int pull = from + random.nextInt(to - from);
      boolean bring = random.nextBoolean();
      brought[pull - from] = bring;
      dugOut.bring(pull, bring);
      Aside aside = new Aside(timbers, from, brought);
      int count = 0;
      for (int i = from; i < to; i++) {
        assertThat(dugOut.isAside(i)).isEqualTo(aside.isAside(i));
        count += aside.isAside(i) ? 1 : 0;
      }
      assertThat(dugOut.asideCount()).isEqualTo(count);
      most = Math.max(most, count);
      least = Math.min(least, count);
    }
    assertThat(most).as("some toggles matter").isGreaterThan(least);
  }
}
