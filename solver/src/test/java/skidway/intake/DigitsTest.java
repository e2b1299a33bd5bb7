package skidway.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Looking at characters one by one says the same as a pattern. */
class DigitsTest {
  private static final String SEEN = "0123456789 .,-x\u0663";

  @Test
  void onlyDigitsAreWhatAPatternTakesForThem() {
    Random random = new Random(3);
    int both = 0;
    for (int i = 0; i < 20_000; i++) {
      String text = text(random);
      both += Digits.only(text, 4) ? 1 : 0;
      assertThat(Digits.only(text, 4)).as(text).isEqualTo(text.matches("[0-9]{1,4}"));
    }
    assertThat(both).isGreaterThan(1000);
  }

  private static String text(Random random) {
    StringBuilder text = new StringBuilder();
    for (int length = random.nextInt(6); length > 0; length--) {
      int kinds = random.nextInt(3) == 0 ? SEEN.length() : 10;
      text.append(SEEN.charAt(random.nextInt(kinds)));
    }
    return text.toString();
  }

  @Test
  void aRunEndsAtTheFirstOtherCharacter() {
    assertThat(Digits.at("a 123 4", 2)).isEqualTo(3);
    assertThat(Digits.at("a 123", 1)).isZero();
    assertThat(Digits.at("a", 1)).isZero();
    assertThat(Digits.at("a", 7)).isZero();
  }

  @Test
  void spacesBetweenThousandsAreStillSeen() {
    assertThat(Decimals.OPEN.plain("4 990 mm")).contains("4990 mm");
    assertThat(Decimals.OPEN.plain("4\u00a0990")).contains("4990");
    assertThat(Decimals.OPEN.plain("16 4 1/2")).contains("16 4 1/2");
    assertThat(Decimals.OPEN.plain("3 1000")).contains("3 1000");
    assertThat(Decimals.OPEN.plain("4,990")).isEmpty();
  }
}
