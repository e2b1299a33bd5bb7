package skidway.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "16'-4 1/2\" | none  | 4.9911",
        "16 4 1/2    | none  | 4.9911",
        "16-4-1/2    | none  | 4.9911",
        "16 4        | ft-in | 4.9784",
        "16          | ft-in | 4.8768",
        "4 1/2       | in    | 0.1143",
        "4990,5      | mm    | 4.9905",
        "4.990,5     | mm    | 4.9905",
        "4 990       | mm    | 4.99",
        "4,99 m      | none  | 4.99",
        "330         | cm    | 3.3",
        "3300 мм     | none  | 3.3",
        "4 1/2       | ft-in | -1",
        "16 4        | none  | -1",
        "4990        | none  | -1",
        "4,990       | mm    | -1"
      })
  void asListsWriteThem(String text, String unit, double metres) {
    Optional<LengthText> length =
        Decimals.OPEN.plain(text).flatMap(p -> LengthText.read(p, ListUnit.of(unit)));
    if (metres < 0) {
      assertThat(length).isEmpty();
    } else {
      assertThat(length.orElseThrow().metres()).isCloseTo(metres, Offset.offset(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "150x200    | mm | 0.15   | 0.2",
        "150/200    | mm | 0.15   | 0.2",
        "6\" x 8\"  | mm | 0.1524 | 0.2032",
        "6 × 8      | in | 0.1524 | 0.2032",
        "15x20 cm   | mm | 0.15   | 0.2"
      })
  void sections(String text, String unit, double widthM, double heightM) {
    SectionText section = SectionText.read(text, ListUnit.of(unit)).orElseThrow();
    assertThat(section.width().metres()).isCloseTo(widthM, Offset.offset(1e-9));
    assertThat(section.height().metres()).isCloseTo(heightM, Offset.offset(1e-9));
  }
}
