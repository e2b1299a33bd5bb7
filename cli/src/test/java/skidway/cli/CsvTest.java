package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.sheet.UglyNames;

/**
 * Tables are read back by a library, as a spreadsheet would. What starts a formula there: = + - @
 * tab and carriage return (OWASP, CSV injection; from memory, confirm).
 */
class CsvTest {
  private static final String STARTS = "=+-@\t\r";

  @Provide
  Arbitrary<String> cells() {
    Arbitrary<String> formulas =
        Arbitraries.of("=", "+", "-", "@", "\t", "\r", " =", ";=", ";\t-", "\n@", "＝", "-1", "--")
            .flatMap(start -> UglyNames.any().map(end -> start + end));
    return Arbitraries.oneOf(formulas, UglyNames.any(), Arbitraries.strings().ascii());
  }

  private static List<String> read(String row, char separator) throws IOException {
    CsvMapper mapper = CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
    return mapper
        .readerForListOf(String.class)
        .with(mapper.schema().withColumnSeparator(separator))
        .<List<String>>readValues(row)
        .next();
  }

  private static boolean evaluated(String cell) {
    String start = cell.replaceFirst("^ +", "");
    return !start.isEmpty()
        && STARTS.indexOf(start.charAt(0)) >= 0
        && !cell.matches("[+-]\\d+(\\.\\d+)?");
  }

  @Property(seed = "20310505", tries = 1000)
  void noCellIsEvaluatedAndNothingElseChanges(@ForAll("cells") String cell) throws IOException {
    List<String> read = read(Csv.row("first", cell, "last"), ',');
    assertThat(read).hasSize(3).startsWith("first").endsWith("last");
    String seen = read.get(1);
    assertThat(evaluated(seen)).as(seen).isFalse();
    if (!cell.isEmpty() && Character.isLetterOrDigit(cell.charAt(0)) && cell.indexOf(';') < 0) {
      assertThat(seen.replace("'", "")).isEqualTo(cell.replace("'", ""));
    }
  }

  /** Where a spreadsheet separates by semicolons or tabs, quotes inside a row protect nothing. */
  @Property(seed = "20310505", tries = 1000)
  void noPartOfACellIsEvaluatedWhereOtherSignsSeparate(@ForAll("cells") String cell) {
    for (String part : Csv.row("first", cell).split("[;\t\r\n]", -1)) {
      assertThat(evaluated(part)).as(part).isFalse();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1.5", "+2", "0", "-0.25", "W1-C1-1", "B07", "a=b", "'=1", "5 - 3"})
  void numbersAndNamesStayAsTheyAre(String cell) {
    assertThat(Csv.row(cell)).isEqualTo(cell);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "=1+1, '=1+1",
        "-B07, '-B07",
        "-1.5.2, '-1.5.2",
        "-, '-",
        "@SUM(A1), '@SUM(A1)",
        "＝1, '＝1",
        "+1-555, '+1-555"
      })
  void whatStartsLikeAFormulaGetsAnApostrophe(String cell, String written) {
    assertThat(Csv.row(cell)).isEqualTo(written);
  }
}
