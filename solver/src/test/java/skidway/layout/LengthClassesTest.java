package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LengthClassesTest {
  @Test
  void lengthsMuchTheSameMakeOneClass() {
    checkEnds(List.of(4), 3.9, 4.0, 4.0, 4.1);
  }

  @Test
  void clearClustersAreFound() {
    checkEnds(List.of(2, 5), 1.2, 1.3, 4.7, 4.8, 4.9);
    checkEnds(List.of(1, 2, 3), 1, 3, 5);
  }

  @Test
  void neverMoreThanAllowedAndLeastLengthLost() {
    // Of the five, the two nearest to each other go together.
    checkEnds(List.of(1, 2, 4, 5), 1, 2, 3, 3.5, 5);
  }

  @Test
  void nothingToDivide() {
    checkEnds(List.of());
    checkEnds(List.of(1), 4);
  }

  private static void checkEnds(List<Integer> expected, double... sortedM) {
    assertThat(LengthClasses.ends(sortedM, 4)).isEqualTo(expected);
  }
}
