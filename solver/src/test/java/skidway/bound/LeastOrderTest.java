package skidway.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class LeastOrderTest {
  /** Against trying every bundle on top; bundles come in any order, some in place of others. */
  @Property(tries = 300)
  void isWhatTryingAllOrdersFinds(@ForAll long seed, @ForAll @IntRange(min = 1, max = 5) int size) {
    Random random = new Random(seed);
    RandomGround ground = new RandomGround(random, 7, 2, 1);
    LeastOrder order = new LeastOrder(ground);
    int[] row = random.ints(0, 7).distinct().limit(7).toArray();
    int set = 0;
    int k = 0;
    for (int i = 0; k < size && i + 1 < row.length; i++) {
      order.with(row[row.length - 1], k, 1);
      long ms = order.with(row[i], k, 1);
      assertThat(ms).isEqualTo(ground.inLeastOrderMs(1, set | 1 << row[i]));
      if (ms != Ground.REFUSED) {
        set |= 1 << row[i];
        k++;
        assertThat(order.ms(k)).isEqualTo(ms);
      }
    }
  }

  @Property(tries = 100)
  void isNeverTooMuchForMoreBundlesThanItTells(@ForAll long seed) {
    RandomGround ground = new RandomGround(new Random(seed), 8, 1, 1);
    LeastOrder order = new LeastOrder(ground);
    int set = 0;
    for (int b = 0; b < 8; b++) {
      long ms = order.with(b, b, 0);
      set |= 1 << b;
      long all = ground.inLeastOrderMs(0, set);
      if (ms == Ground.REFUSED) {
        assertThat(all).isEqualTo(Ground.REFUSED);
        return;
      }
      assertThat(all == Ground.REFUSED || ms <= all).isTrue();
    }
  }
}
