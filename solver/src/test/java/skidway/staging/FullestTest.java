package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class FullestTest {
  private static double fullest(double[] sizes, double room) {
    double most = 0;
    for (double size : sizes) {
      most = size <= room ? Math.max(most, size + fullest(sizes, room - size)) : most;
    }
    return most;
  }

  /** Against trying all selections; never below them, and next to nothing above. */
  @Property(tries = 100)
  void isWhatTheFullestSelectionTakes(@ForAll long seed) {
    Random random = new Random(seed);
    double[] sizes =
        random.ints(1 + random.nextInt(4), 2000, 9000).mapToDouble(t -> t * 1e-4).toArray();
    double room = 2 * random.nextDouble();
    double most = fullest(sizes, room);
    assertThat(new Fullest(sizes).of(room))
        .isBetween(Math.min(room, most), Math.min(room, most + 1.2e-4));
  }

  @Test
  void threeBundlesLeaveTheRestOfTheHeightEmpty() {
    assertThat(new Fullest(new double[] {0.489}).of(1.83)).isCloseTo(3 * 0.489, within(1e-4));
    assertThat(new Fullest(new double[] {0.61}).of(1.83)).isCloseTo(1.83, within(1e-4));
  }

  @Test
  void ofRoomsWithoutEndAllCounts() {
    Fullest fullest = new Fullest(new double[] {0.489, 0});
    assertThat(fullest.of(Double.POSITIVE_INFINITY)).isInfinite();
    assertThat(fullest.of(0)).isZero();
  }
}
