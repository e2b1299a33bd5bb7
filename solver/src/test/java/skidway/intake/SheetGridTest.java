package skidway.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.job.BadInput;

class SheetGridTest {
  private static final String SHEET = "xl/worksheets/sheet1.xml";
  private static final List<List<String>> TABLE =
      List.of(List.of("Mark", "Length"), List.of("a1", "4 m"));

  private static Grid read(byte[] bytes) {
    return SheetGrid.read("list.xlsx", bytes, Optional.empty());
  }

  /** The same spreadsheet with one packed file exchanged. */
  private static byte[] with(String name, byte[] content) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipInputStream in =
            new ZipInputStream(new ByteArrayInputStream(DialectPropertyTest.poi(TABLE)));
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        zip.putNextEntry(new ZipEntry(entry.getName()));
        zip.write(entry.getName().equals(name) ? content : in.readAllBytes());
      }
    }
    return out.toByteArray();
  }

  private static byte[] sheet(String head, String data) throws IOException {
    String xml =
        head
            + "<worksheet"
            + " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>"
            + data
            + "</sheetData></worksheet>";
    return with(SHEET, xml.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void anotherKindOfPackedFileIsToldSo() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("content.xml"));
      zip.write(1);
    }
    assertThatThrownBy(() -> read(out.toByteArray()))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("no XLSX spreadsheet among them");
  }

  @Test
  void aFormulaIsReadAsItsValueAndNumbersWithoutNoise() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      var sheet = book.createSheet("List");
      sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 3));
      sheet.createRow(0).createCell(0).setCellValue("Packing list");
      var row = sheet.createRow(4);
      row.createCell(0).setCellFormula("2*3");
      row.createCell(1).setCellValue(0.1 + 0.2);
      row.createCell(2).setCellFormula("\"W\"&1");
      row.createCell(3).setCellValue(101);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      book.write(bytes);
    }
    Grid grid = read(bytes.toByteArray());
    assertThat(TextGridTest.cells(grid))
        .containsExactly(List.of("Packing list"), List.of("6", "0.3", "W1", "101"));
    assertThat(grid.rows().get(1).number()).isEqualTo(5);
    assertThat(grid.rows().get(1).cell(0).number()).isTrue();
  }

  @Test
  void aCoverBeforeTheListIsPassedOver() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.createSheet("Cover").createRow(0).createCell(0).setCellValue("The mill");
      var sheet = book.createSheet("List");
      var row = sheet.createRow(0);
      row.createCell(0).setCellValue("Mark");
      row.createCell(1).setCellValue("Length");
      book.write(bytes);
    }
    assertThat(read(bytes.toByteArray()).origin()).isEqualTo("sheet \"List\"");
    Grid named = SheetGrid.read("list.xlsx", bytes.toByteArray(), Optional.of("cover"));
    assertThat(named.origin()).isEqualTo("sheet \"Cover\"");
  }

  @Test
  void anotherSheetIsNamed() {
    assertThatThrownBy(
            () -> SheetGrid.read("l.xlsx", DialectPropertyTest.fast(TABLE), Optional.of("Lots")))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("no sheet \"Lots\"")
        .hasMessageContaining("\"List\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
  void entitiesAreRefused(String encoding) throws IOException {
    String xml =
        "<?xml version=\"1.0\"?><!DOCTYPE w [<!ENTITY x SYSTEM"
            + " \"file:///etc/hostname\">]><worksheet><sheetData><row r=\"1\"><c r=\"A1\""
            + " t=\"str\"><v>&x;</v></c></row></sheetData></worksheet>";
    byte[] bytes = with(SHEET, xml.getBytes(Charset.forName(encoding)));
    assertThatThrownBy(() -> read(bytes))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("a document type in " + SHEET);
  }

  @Test
  void whatBurstsIsRefused() throws IOException {
    byte[] zeros = new byte[40_000_000];
    byte[] bytes = with("xl/styles.xml", zeros);
    assertThat(bytes.length).isLessThan(100_000);
    assertThatThrownBy(() -> read(bytes))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("200 times its size");
  }

  @Test
  void deepNestingIsRefused() throws IOException {
    byte[] bytes = sheet("", "<a>".repeat(100_000) + "</a>".repeat(100_000));
    assertThatThrownBy(() -> read(bytes)).isInstanceOf(BadInput.class).hasMessageContaining("deep");
  }

  @Test
  void longTextAndHugeNumbersAreRefusedOrShort() throws IOException {
    byte[] longText =
        sheet("", "<row r=\"1\"><c r=\"A1\" t=\"str\"><v>" + "x".repeat(1001) + "</v></c></row>");
    assertThatThrownBy(() -> read(longText))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("1000 characters");
    byte[] huge = sheet("", "<row r=\"1\"><c r=\"A1\"><v>1E99999999</v></c></row>");
    assertThat(TextGridTest.cells(read(huge))).containsExactly(List.of("1E+99999999"));
  }

  @Test
  void columnsBeyondTheLimitAreRefused() throws IOException {
    byte[] wide = sheet("", "<row r=\"1\"><c r=\"XFD1\" t=\"str\"><v>x</v></c></row>");
    assertThatThrownBy(() -> read(wide))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("200 columns");
  }
}
