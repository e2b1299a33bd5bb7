package skidway.audit.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SegmentTest {
  private static final double TOLERANCE_M = 1e-9;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # one is a point        | | |
          0 0, 0 0 | 3 4          | 5
          # beside, beyond an end, on it
          0 0, 4 0 | 1 2          | 2
          0 0, 4 0 | 7 4          | 5
          0 0, 4 0 | 4 0          | 0
          0 0, 3 3 | 0 2          | 1.41421356237
          """)
  void distanceOfAPoint(String segment, String point, double expectedM) {
    assertThat(Shape.segment(segment).distanceTo(Shape.points(point).get(0)))
        .isCloseTo(expectedM, within(TOLERANCE_M));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0 0, 0 0 | 3 4, 3 4     | 5
          0 0, 4 0 | 2 -1, 2 1    | 0
          0 0, 4 0 | 2 0, 2 1     | 0
          0 0, 4 0 | 4 0, 8 0     | 0
          0 0, 4 0 | 1 0, 3 0     | 0
          0 0, 4 0 | 0 2, 4 2     | 2
          0 0, 4 0 | 5 0, 8 0     | 1
          0 0, 4 0 | 2 1, 2 5     | 1
          0 0, 1 1 | 1 0, 2 -1    | 0.70710678119
          """)
  void distanceOfASegment(String a, String b, double expectedM) {
    assertThat(Shape.segment(a).distanceTo(Shape.segment(b)))
        .isCloseTo(expectedM, within(TOLERANCE_M));
    assertThat(Shape.segment(b).distanceTo(Shape.segment(a)))
        .isCloseTo(expectedM, within(TOLERANCE_M));
  }
}
