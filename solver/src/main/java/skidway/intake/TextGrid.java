package skidway.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.job.TextRows;

/** Reads a list of separated values (RFC 4180 and its dialects) into a grid. */
final class TextGrid {
  private TextGrid() {}

  static Grid read(String fileName, byte[] bytes, Optional<String> encoding) {
    Encoding decoded = Encoding.of(fileName, bytes, encoding);
    String text = plain(decoded.text());
    refuseBinary(fileName, text);
    char separator = Dialect.separator(text);
    String body = Dialect.hasHint(text) ? "\n" + text.substring(6) : text;
    List<ListRow> rows = new ArrayList<>();
    for (List<TextRows.Cell> row :
        TextRows.read(fileName, body, separator, ListLimits.LONGEST_CELL)) {
      rows.add(row(row));
    }
    GridLimits.check(fileName, rows);
    String origin =
        decoded.words()
            + " text, cells separated by "
            + switch (separator) {
              case ',' -> "commas";
              case ';' -> "semicolons";
              case '\t' -> "tabs";
              default -> "\"" + separator + '"';
            };
    return new Grid(fileName, origin, false, rows);
  }

  private static ListRow row(List<TextRows.Cell> cells) {
    List<Cell> row = new ArrayList<>(cells.size());
    for (TextRows.Cell cell : cells) {
      row.add(new Cell(cell.text(), false, cell.line(), cell.column()));
    }
    return new ListRow(cells.get(0).line(), row);
  }

  /** Line feeds as line ends, no byte order mark, and spaces where lists have harder ones. */
  private static String plain(String text) {
    String lines = text.replace("\r\n", "\n").replace('\r', '\n');
    return lines.startsWith("\ufeff") ? lines.substring(1) : lines;
  }

  private static void refuseBinary(String fileName, String text) {
    if (text.indexOf('\0') >= 0 || text.indexOf('\ufffd') >= 0) {
      throw Trouble.of(
          fileName,
          "bytes that are no text",
          "a packing list is an XLSX spreadsheet, or text with commas, semicolons or tabs",
          "open it and save it as XLSX or as CSV in UTF-8, or name its --encoding");
    }
    if (text.isBlank()) {
      throw Trouble.of(fileName, "no text", "a list has a header and rows", "ask for it again");
    }
  }
}
