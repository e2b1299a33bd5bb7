package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.units.UnitSystem;

/** Texts are remembered by the kind of quantity they were read as. */
final class ValuesTest {
  private final Problems problems = new Problems();
  private final Values values = new Values(problems, UnitSystem.US, true);
  private final Place place = new SourceFile("pieces.csv", "x").at(1, 1);

  @Test
  void theSameTextIsAnotherFigureInAnotherColumn() {
    for (int round = 0; round < 2; round++) {
      assertThat(read(Bounds.PIECE_LENGTH, "2")).isCloseTo(0.6096, within(1e-9));
      assertThat(read(Bounds.PIECE_MASS, "2")).isCloseTo(0.90718474, within(1e-9));
      assertThat(read(Bounds.COURSE, "2")).isEqualTo(2);
    }
  }

  @Test
  void aRememberedTextIsHeldToEachColumnsOwnRange() {
    assertThat(read(Bounds.PIECE_LENGTH, "8 ft")).isCloseTo(2.4384, within(1e-9));
    assertThat(problems.count()).isZero();
    assertThat(read(Bounds.SECTION, "8 ft")).isNaN();
    assertThat(problems.count()).isEqualTo(1);
  }

  @Test
  void whatCannotBeReadIsAProblemEachTime() {
    for (String text : List.of("3 stone", "3 stone")) {
      assertThat(read(Bounds.PIECE_LENGTH, text)).isNaN();
    }
    assertThat(problems.count()).isEqualTo(2);
  }

  @Test
  void readsOnWhenAllTextsDiffer() {
    for (int i = 0; i < 12_000; i++) {
      assertThat(read(Bounds.PIECE_LENGTH, i + 100 + " mm"))
          .isCloseTo((i + 100) / 1e3, within(1e-9));
    }
    assertThat(problems.count()).isZero();
  }

  private double read(Bounds bounds, String text) {
    return values.read(place, bounds.range(), text);
  }
}
