package skidway.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import skidway.job.CsvText;

/** A table reads back equal from every dialect, and from spreadsheets of two other writers. */
class DialectPropertyTest {
  @Provide
  Arbitrary<List<List<String>>> tables() {
    Arbitrary<String> cell =
        Arbitraries.strings()
            .withChars("abcXYZ0123456789 ,;.'\"/x\u00e4\u00f6\u00df\n")
            .ofMinLength(1)
            .ofMaxLength(12)
            .map(s -> "c" + s.strip());
    return cell.list().ofSize(4).list().ofMinSize(3).ofMaxSize(12);
  }

  @Property(tries = 200, seed = "17")
  void inEveryDialect(
      @ForAll("tables") List<List<String>> table,
      @ForAll("separators") char separator,
      @ForAll("encodings") String encoding,
      @ForAll boolean windowsLineEnds) {
    StringBuilder text = new StringBuilder("\ufeff".repeat(encoding.startsWith("UTF-16") ? 1 : 0));
    for (List<String> row : table) {
      text.append(quoted(row, separator)).append(windowsLineEnds ? "\r\n" : "\n");
    }
    byte[] bytes = text.toString().getBytes(Charset.forName(encoding));
    assertThat(TextGridTest.cells(TextGrid.read("list.csv", bytes, Optional.empty())))
        .isEqualTo(table);
  }

  /** Quoted wherever any dialect would cut. */
  private static String quoted(List<String> row, char separator) {
    List<String> cells =
        row.stream()
            .map(c -> c.matches("[\\p{L}\\d ]+") ? c : '"' + c.replace("\"", "\"\"") + '"')
            .toList();
    return String.join(String.valueOf(separator), cells);
  }

  @Provide
  Arbitrary<Character> separators() {
    return Arbitraries.of(',', ';', '\t');
  }

  @Provide
  Arbitrary<String> encodings() {
    return Arbitraries.of("UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252");
  }

  @Property(tries = 30, seed = "17")
  void asSpreadsheetsOfTwoWriters(@ForAll("tables") List<List<String>> table) throws IOException {
    assertThat(TextGridTest.cells(SheetGrid.read("list.xlsx", fast(table), Optional.empty())))
        .isEqualTo(table);
    assertThat(TextGridTest.cells(SheetGrid.read("list.xlsx", poi(table), Optional.empty())))
        .isEqualTo(table);
  }

  @Property(tries = 100, seed = "17")
  void asOurOwnTable(@ForAll("tables") List<List<String>> table) {
    StringBuilder text = new StringBuilder();
    table.forEach(row -> text.append(CsvText.row(row, ';')).append('\n'));
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    assertThat(TextGridTest.cells(TextGrid.read("list.csv", bytes, Optional.empty())))
        .isEqualTo(table);
  }

  static byte[] fast(List<List<String>> table) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("List");
      for (int r = 0; r < table.size(); r++) {
        for (int c = 0; c < table.get(r).size(); c++) {
          sheet.value(r, c, table.get(r).get(c));
        }
      }
    }
    return bytes.toByteArray();
  }

  static byte[] poi(List<List<String>> table) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      var sheet = book.createSheet("List");
      for (int r = 0; r < table.size(); r++) {
        Row row = sheet.createRow(r);
        for (int c = 0; c < table.get(r).size(); c++) {
          row.createCell(c).setCellValue(table.get(r).get(c));
        }
      }
      book.write(bytes);
    }
    return bytes.toByteArray();
  }
}
