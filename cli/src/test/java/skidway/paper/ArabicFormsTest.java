package skidway.paper;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Forms as the Unicode charts name them (block Arabic Presentation Forms-B). */
class ArabicFormsTest {
  @Test
  void lettersTakeTheFormOfTheirPlace() {
    // seen initial, lam with alef final, meem isolated: "salam"
    assertThat(ArabicForms.joined("سلام")).isEqualTo("\uFEB3\uFEFC\uFEE1");
    // beh initial, beh medial, beh final
    assertThat(ArabicForms.joined("ببب")).isEqualTo("\uFE91\uFE92\uFE90");
  }

  @Test
  void marksDoNotPartLetters() {
    assertThat(ArabicForms.joined("ب\u064Eب")).isEqualTo("\uFE91\u064E\uFE90");
  }

  @Test
  void otherLettersStay() {
    assertThat(ArabicForms.joined("D10 שלום")).isEqualTo("D10 שלום");
    assertThat(ArabicForms.single("\uFEB3\uFEFC\uFEE1")).isEqualTo("سلام");
  }

  @Test
  void aLineIsPutInTheOrderItIsDrawn() {
    assertThat(ReadingOrder.leftToRight("ab (שלום) 12")).isEqualTo("ab (םולש) 12");
    assertThat(ReadingOrder.leftToRight("D10")).isEqualTo("D10");
  }
}
