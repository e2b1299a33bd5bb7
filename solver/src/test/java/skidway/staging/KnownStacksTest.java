package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class KnownStacksTest {
  private static StackCost cost(int ms) {
    return new StackCost(true, List.of(), ms, 0, 0, 0, 0);
  }

  /** Many more sets than there is room for at first; what is found was kept for just that set. */
  @Property(tries = 20)
  void whatIsFoundWasKeptForTheSameStack(@ForAll long seed) {
    Random random = new Random(seed);
    KnownStacks known = new KnownStacks();
    Map<List<Integer>, Integer> kept = new HashMap<>();
    int found = 0;
    for (int i = 0; i < 5_000; i++) {
      int k = 1 + random.nextInt(KnownStacks.MOST_BUNDLES);
      int first = random.nextInt(4);
      int[] set = random.ints(first, first + k + 1).distinct().limit(k).sorted().toArray();
      int footing = random.nextInt(2);
      int home = random.nextInt(3) - 1;
      List<Integer> key = new ArrayList<>(List.of(footing, home));
      for (int b : set) {
        key.add(b);
      }
      StackCost answer = known.find(set, k, footing, home);
      if (answer == null) {
        known.keep(cost(i));
        assertThat(known.find(set, k, footing, home)).isEqualTo(cost(i));
        kept.put(key, i);
      } else {
        assertThat(answer).isEqualTo(cost(kept.getOrDefault(key, -1)));
        found++;
      }
    }
    assertThat(found).isGreaterThan(100);
  }

  @Test
  void nearlyAllAreRememberedAsTheyBecomeMore() {
    KnownStacks known = new KnownStacks();
    int sets = 20_000;
    for (int i = 0; i < sets; i++) {
      assertThat(known.find(new int[] {i, i + 1}, 2, 0, -1)).isNull();
      known.keep(cost(i));
    }
    int found = 0;
    for (int i = 0; i < sets; i++) {
      found += known.find(new int[] {i, i + 1}, 2, 0, -1) == null ? 0 : 1;
    }
    assertThat(found).isGreaterThan(sets / 2);
  }

  /** So many that some of them come to the same place. */
  @Test
  void theSameBundlesElsewhereAreAnotherStack() {
    KnownStacks known = new KnownStacks();
    for (int i = 0; i < 1_000; i++) {
      known.find(new int[] {i, i + 1}, 2, 0, 0);
      known.keep(cost(i));
    }
    for (int i = 0; i < 1_000; i++) {
      for (int other = 1; other < 200; other++) {
        assertThat(known.find(new int[] {i, i + 1}, 2, other, 0)).isNull();
        assertThat(known.find(new int[] {i, i + 1}, 2, 0, 4096 * other)).isNull();
      }
    }
  }
}
