package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import skidway.units.UnitSystem;

class PaperSizeTest {
  @Test
  void isWhatIsUsualWithTheUnits() {
    assertThat(PaperSize.usualWith(UnitSystem.US)).isEqualTo(PaperSize.LETTER);
    assertThat(PaperSize.usualWith(UnitSystem.METRIC)).isEqualTo(PaperSize.A4);
  }

  @Test
  void isCalledByItsWord() {
    assertThat(PaperSize.of("Tabloid")).contains(PaperSize.TABLOID);
    assertThat(PaperSize.of("a5")).isEmpty();
  }

  /** Sides of US sizes are told in inches: 8.5 by 11, 11 by 17. */
  @Test
  void usSizesAreWholeHalvesOfInches() {
    assertThat(PaperSize.LETTER.widthMm() / 25.4).isCloseTo(8.5, within(1e-9));
    assertThat(PaperSize.LETTER.heightMm() / 25.4).isCloseTo(11, within(1e-9));
    assertThat(PaperSize.TABLOID.widthMm() / 25.4).isCloseTo(11, within(1e-9));
    assertThat(PaperSize.TABLOID.heightMm() / 25.4).isCloseTo(17, within(1e-9));
  }

  @Test
  void aHalfOfALargeSheetHoldsTheTags() {
    for (PaperSize large : PaperSize.values()) {
      PaperSize small = large.forTags();
      assertThat(small.forTags()).isEqualTo(small);
      if (small != large) {
        assertThat(small.heightMm()).isCloseTo(large.widthMm(), within(1e-9));
        assertThat(2 * small.widthMm()).isCloseTo(large.heightMm(), within(0.5));
      }
    }
    assertThatThrownBy(() -> new TagSheet(PaperSize.A3, 4))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aDrawingLeavesMarginsAndFoot() {
    Paper room = PaperSize.LETTER.lying();
    assertThat(room.widthMm()).isCloseTo(264, within(1e-9));
    assertThat(room.heightMm()).isCloseTo(194, within(1e-9));
  }
}
