package skidway.shakeout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PileFillTest {
  private static final PileFill.PickCost EVEN = (people, layer) -> 10L * layer;
  private static final double OVERHANG_M = 0.6;

  @Test
  void whatIsNeededFirstLiesOnTop() {
    List<PileFill.Timber> pile =
        new PileFill(2, OVERHANG_M, EVEN)
            .best(List.of(timber(1, 3, 50), timber(7, 3, 50), timber(4, 3, 50)), 9);
    assertThat(pile).extracting(PileFill.Timber::pull).containsExactly(7, 4, 1);
  }

  @Test
  void aLongTimberDoesNotLieOnAShortOne() {
    List<PileFill.Timber> pile =
        new PileFill(1, OVERHANG_M, EVEN).best(List.of(timber(1, 4, 50), timber(2, 3, 90)), 9);
    assertThat(pile).extracting(PileFill.Timber::pull).containsExactly(2);
  }

  @Test
  void whatOverhangsByTheLimitMayLieThere() {
    List<PileFill.Timber> pile =
        new PileFill(1, OVERHANG_M, EVEN).best(List.of(timber(1, 3.6, 50), timber(2, 3, 90)), 9);
    assertThat(pile).extracting(PileFill.Timber::pull).containsExactly(2, 1);
  }

  @Test
  void whatSavesNothingIsLeftOut() {
    assertThat(new PileFill(1, OVERHANG_M, EVEN).best(List.of(timber(1, 3, -1)), 9)).isEmpty();
  }

  /** All subsets of up to 9 timbers, in the only order in which each may lie. */
  @Test
  void noOtherChoiceSavesMore() {
    Random random = new Random(5);
    for (int round = 0; round < 300; round++) {
      List<PileFill.Timber> timbers = new ArrayList<>();
      int n = 1 + random.nextInt(9);
      for (int i = 0; i < n; i++) {
        timbers.add(timber(i, 2 + 0.5 * random.nextInt(5), random.nextInt(60) - 10));
      }
      int perLayer = 1 + random.nextInt(3);
      int most = 1 + random.nextInt(9);
      List<PileFill.Timber> pile = new PileFill(perLayer, OVERHANG_M, EVEN).best(timbers, most);
      assertThat(isLegal(pile)).isTrue();
      assertThat(pile).hasSizeLessThanOrEqualTo(most);
      assertThat(saved(pile, perLayer)).isEqualTo(bestOfAll(timbers, perLayer, most));
    }
  }

  private static long bestOfAll(List<PileFill.Timber> timbers, int perLayer, int most) {
    List<PileFill.Timber> turn = new ArrayList<>(timbers);
    turn.sort(Comparator.comparingInt(PileFill.Timber::pull).reversed());
    long best = 0;
    for (int set = 0; set < 1 << turn.size(); set++) {
      List<PileFill.Timber> some = new ArrayList<>();
      for (int i = 0; i < turn.size(); i++) {
        if ((set >> i & 1) == 1) {
          some.add(turn.get(i));
        }
      }
      if (some.size() <= most && isLegal(some)) {
        best = Math.max(best, saved(some, perLayer));
      }
    }
    return best;
  }

  private static boolean isLegal(List<PileFill.Timber> pile) {
    for (int upper = 0; upper < pile.size(); upper++) {
      for (int lower = 0; lower < upper; lower++) {
        if (pile.get(upper).lengthM() > pile.get(lower).lengthM() + OVERHANG_M
            || pile.get(upper).pull() > pile.get(lower).pull()) {
          return false;
        }
      }
    }
    return true;
  }

  private static long saved(List<PileFill.Timber> pile, int perLayer) {
    long sum = 0;
    for (int i = 0; i < pile.size(); i++) {
      sum += pile.get(i).gainMs() - EVEN.ms(1, i / perLayer);
    }
    return sum;
  }

  private static PileFill.Timber timber(int pull, double lengthM, long gainMs) {
    return new PileFill.Timber(pull, lengthM, 1, gainMs);
  }
}
