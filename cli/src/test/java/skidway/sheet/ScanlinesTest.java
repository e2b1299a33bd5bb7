package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScanlinesTest {
  private static final List<PagePoint> SQUARE = Box.at(0, 0, 4, 4).corners();

  @Test
  void levelLinesRunFromSideToSide() {
    assertThat(Scanlines.in(SQUARE, 0, 2)).isEqualTo("M0,1L4,1M0,3L4,3");
  }

  @Test
  void uprightLinesRunFromTopToBottom() {
    assertThat(Scanlines.in(SQUARE, 90, 2)).isEqualTo("M3,0L3,4M1,0L1,4");
  }

  @Test
  void aNotchIsLeftOut() {
    List<PagePoint> notched =
        List.of(
            new PagePoint(0, 0),
            new PagePoint(2, 0),
            new PagePoint(2, 3),
            new PagePoint(4, 3),
            new PagePoint(4, 0),
            new PagePoint(6, 0),
            new PagePoint(6, 4),
            new PagePoint(0, 4));
    assertThat(Scanlines.in(notched, 0, 2)).isEqualTo("M0,1L2,1M4,1L6,1M0,3L6,3");
  }

  @Test
  void tooSmallForALineStaysPlain() {
    assertThat(Scanlines.in(Box.at(0, 0.2, 4, 0.4).corners(), 0, 2)).isEmpty();
  }
}
