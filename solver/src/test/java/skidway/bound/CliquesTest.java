package skidway.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CliquesTest {
  @Test
  void everyPairThatExcludesEachOtherIsInAGroupAndNoOtherPairIs() {
    RandomGround ground = new RandomGround(new Random(3), 2, 30, 1);
    Cliques cliques = Cliques.of(ground);
    for (int s = 0; s < ground.spots(); s++) {
      for (int t = 0; t < ground.spots(); t++) {
        int[] ofS = cliques.ofSpot(s);
        int other = t;
        boolean together =
            Arrays.stream(cliques.ofSpot(t))
                .anyMatch(g -> Arrays.stream(ofS).anyMatch(h -> h == g));
        boolean excluded = Arrays.stream(ground.excludes(s)).anyMatch(e -> e == other);
        if (s != t) {
          assertThat(together).isEqualTo(excluded);
        }
      }
    }
  }
}
