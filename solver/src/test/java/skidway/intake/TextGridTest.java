package skidway.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.job.BadInput;

/** Numbered rules are those of RFC 4180, section 2. */
class TextGridTest {
  private static List<List<String>> read(String text) {
    return cells(
        TextGrid.read("list.csv", text.getBytes(StandardCharsets.UTF_8), Optional.empty()));
  }

  static List<List<String>> cells(Grid grid) {
    return grid.rows().stream().map(r -> r.cells().stream().map(Cell::text).toList()).toList();
  }

  @Test
  void rules1To4RowsEndWithLineEndsAndTheLastNeedNot() {
    assertThat(read("aaa,bbb,ccc\r\nzzz,yyy,xxx"))
        .isEqualTo(read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"))
        .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
  }

  @Test
  void rules5And6QuotedCellsHoldSeparatorsAndLineEnds() {
    assertThat(read("\"aaa\",\"b \r\nb,b\",\"ccc\"\r\nzzz,yyy,xxx"))
        .containsExactly(List.of("aaa", "b \nb,b", "ccc"), List.of("zzz", "yyy", "xxx"));
  }

  @Test
  void rule7AQuoteInQuotesIsWrittenTwice() {
    assertThat(read("\"aaa\",\"b\"\"bb\",\"ccc\"\n"))
        .containsExactly(List.of("aaa", "b\"bb", "ccc"));
  }

  @Test
  void inchMarksInPlainCellsAreText() {
    assertThat(read("a,16'-4 1/2\",c\n")).containsExactly(List.of("a", "16'-4 1/2\"", "c"));
  }

  @Test
  void aQuoteWithoutEndIsToldAtItsPlace() {
    assertThatThrownBy(() -> read("a,b\nc,\"d\n"))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("list.csv:");
  }

  @ParameterizedTest
  @CsvSource({
    "UTF-8,''",
    "UTF-8,\ufeff",
    "UTF-16LE,\ufeff",
    "UTF-16BE,\ufeff",
    "UTF-16LE,''",
    "UTF-16BE,''",
    "windows-1252,''"
  })
  void encodingsAreFoundOut(String encoding, String mark) {
    byte[] bytes = (mark + "Länge;Höhe\n4990,5;200\n").getBytes(Charset.forName(encoding));
    assertThat(cells(TextGrid.read("list.csv", bytes, Optional.empty())))
        .containsExactly(List.of("Länge", "Höhe"), List.of("4990,5", "200"));
  }

  @Test
  void aHintOfSomeSpreadsheetProgramsNamesTheSeparator() {
    assertThat(read("sep=;\na,b;c\nd,e;f\n"))
        .containsExactly(List.of("a,b", "c"), List.of("d,e", "f"));
  }
}
