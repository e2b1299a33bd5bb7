package skidway.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import skidway.job.BadInput;

/** Reads one sheet of an XLSX spreadsheet into a grid. */
final class SheetGrid {
  /** Spreadsheet programs show at most so many digits; the rest is noise of binary fractions. */
  private static final MathContext SHOWN = new MathContext(15);

  /** Among so many the list is looked for. */
  private static final int MOST_SHEETS = 20;

  private SheetGrid() {}

  static Grid read(String fileName, byte[] bytes, Optional<String> wanted) {
    try {
      Unpacking.check(fileName, bytes);
      try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(bytes))) {
        Grid first = grid(sheet(book, fileName, wanted), fileName);
        Grid grid = wanted.isEmpty() ? withHeader(book, first) : first;
        if (grid.rows().isEmpty()) {
          throw Trouble.of(
              fileName,
              "a " + grid.origin() + " without text",
              "a list has a header and rows",
              "name another with --sheet; there are " + names(book));
        }
        return grid;
      }
    } catch (BadInput e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      // The reader answers spoiled files with whatever its inner parts throw.
      throw Trouble.of(
          fileName,
          "a spreadsheet that cannot be read (" + reason(e) + ")",
          "a packing list is a sound XLSX spreadsheet",
          "open it in a spreadsheet program and save it again");
    }
  }

  private static Grid grid(Sheet sheet, String fileName) throws IOException {
    List<ListRow> rows = new ArrayList<>();
    try (Stream<Row> stream = sheet.openStream()) {
      stream.forEach(row -> add(row, rows, fileName));
    }
    GridLimits.check(fileName, rows);
    return new Grid(fileName, "sheet " + Trouble.quote(sheet.getName()), true, rows);
  }

  /** The first sheet with a header: a cover or notes often stand before the list. */
  private static Grid withHeader(ReadableWorkbook book, Grid first) throws IOException {
    if (Header.find(first, OptionalInt.empty()).found()) {
      return first;
    }
    for (Sheet sheet : book.getSheets().skip(1).limit(MOST_SHEETS).toList()) {
      Grid grid = grid(sheet, first.fileName());
      if (Header.find(grid, OptionalInt.empty()).found()) {
        return grid;
      }
    }
    return first;
  }

  private static Sheet sheet(ReadableWorkbook book, String fileName, Optional<String> wanted) {
    Optional<Sheet> sheet =
        wanted.isEmpty()
            ? book.getSheets().findFirst()
            : book.getSheets().filter(s -> s.getName().equalsIgnoreCase(wanted.get())).findFirst();
    return sheet.orElseThrow(
        () ->
            Trouble.of(
                fileName,
                wanted.map(w -> "no sheet " + Trouble.quote(w)).orElse("no sheet"),
                "the sheets are " + names(book),
                "name one of them with --sheet"));
  }

  private static String names(ReadableWorkbook book) {
    return book.getSheets()
        .limit(MOST_SHEETS)
        .map(s -> Trouble.quote(s.getName()))
        .collect(Collectors.joining(", "));
  }

  private static void add(Row row, List<ListRow> rows, String fileName) {
    List<Cell> cells = new ArrayList<>();
    boolean text = false;
    for (int i = 0; i < row.getCellCount(); i++) {
      org.dhatim.fastexcel.reader.Cell cell = row.hasCell(i) ? row.getCell(i) : null;
      String value = cell == null ? "" : text(cell);
      if (value.length() > ListLimits.LONGEST_CELL) {
        throw GridLimits.tooMuch(
            fileName,
            "a text of more than "
                + ListLimits.LONGEST_CELL
                + " characters in row "
                + row.getRowNum());
      }
      if (i >= ListLimits.MOST_COLUMNS) {
        if (!value.isEmpty()) {
          throw GridLimits.tooMuch(
              fileName,
              "more than " + ListLimits.MOST_COLUMNS + " columns in row " + row.getRowNum());
        }
        continue;
      }
      boolean number = cell != null && isNumber(cell);
      cells.add(new Cell(value, number, row.getRowNum(), i + 1));
      text |= !value.isEmpty();
    }
    if (text) {
      if (rows.size() >= ListLimits.MOST_ROWS) {
        throw GridLimits.tooMuch(fileName, "more than " + ListLimits.MOST_ROWS + " rows");
      }
      rows.add(new ListRow(row.getRowNum(), trimmed(cells)));
    }
  }

  private static List<Cell> trimmed(List<Cell> cells) {
    int end = cells.size();
    while (end > 0 && cells.get(end - 1).empty()) {
      end--;
    }
    return List.copyOf(cells.subList(0, end));
  }

  private static boolean isNumber(org.dhatim.fastexcel.reader.Cell cell) {
    return cell.getType() == CellType.NUMBER
        || (cell.getType() == CellType.FORMULA && cell.getValue() instanceof BigDecimal);
  }

  /** A formula counts as the value that the program which wrote it had worked out. */
  private static String text(org.dhatim.fastexcel.reader.Cell cell) {
    if (cell.getType() == CellType.EMPTY) {
      return "";
    }
    if (cell.getValue() instanceof BigDecimal number) {
      return plain(number);
    }
    String raw = cell.getType() == CellType.STRING ? cell.asString() : cell.getRawValue();
    return raw == null ? "" : raw.strip();
  }

  /** A number whose zeros alone would fill the memory keeps its exponent, and is refused later. */
  private static String plain(BigDecimal number) {
    if (number.scale() == 0 && number.precision() <= SHOWN.getPrecision()) {
      return number.toString();
    }
    boolean sane = Math.abs((long) number.scale()) < 100 && number.precision() < 400;
    return sane
        ? number.round(SHOWN).stripTrailingZeros().toPlainString()
        : number.round(SHOWN).toString();
  }

  private static String reason(Exception e) {
    String message = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    String line = message.lines().findFirst().orElse("").strip();
    return line.length() <= 80 ? line : line.substring(0, 80) + "...";
  }
}
