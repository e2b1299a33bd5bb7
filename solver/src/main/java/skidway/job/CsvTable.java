package skidway.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Reads a table row by row: comma, semicolon or tab between cells, quoted cells, blank lines. A
 * wrong row is a problem and the next one is read; of an endless table only a bounded part is.
 */
final class CsvTable {
  private CsvTable() {}

  /**
   * Hands each row that has the right number of cells to a reader.
   *
   * @return whether all rows were handed over; if not, there is a problem
   */
  static boolean read(
      SourceFile file,
      List<String> required,
      List<String> optional,
      Values values,
      Consumer<CsvRow> reader) {
    try (CsvCells cells = new CsvCells(file, values.problems())) {
      List<CsvCells.Cell> first = cells.next();
      if (first.isEmpty()) {
        if (!cells.broken()) {
          String allowed = "the columns are " + String.join(", ", required);
          values.problems().add(file.whole(), "no header", allowed, "write the header");
        }
        return false;
      }
      Optional<CsvHeader> header = CsvHeader.read(first, required, optional, values.problems());
      return header.isPresent() && rows(cells, file, header.get(), values, reader);
    }
  }

  private static boolean rows(
      CsvCells cells, SourceFile file, CsvHeader header, Values values, Consumer<CsvRow> reader) {
    boolean all = true;
    int rows = 0;
    for (List<CsvCells.Cell> row = cells.next(); !row.isEmpty(); row = cells.next()) {
      if (++rows > FileBounds.MOST_ROWS) {
        values
            .problems()
            .add(
                row.get(0).place(),
                "more than " + FileBounds.MOST_ROWS + " rows",
                "a table has at most " + FileBounds.MOST_ROWS + " rows",
                "look whether this is the right file; the rest was not read");
        return false;
      }
      boolean fits = fits(row, header, values.problems());
      all &= fits;
      if (fits) {
        reader.accept(new CsvRow(header, row, values));
      }
    }
    if (rows == 0 && !cells.broken()) {
      String allowed = "a job has a row or more in every table";
      values.problems().add(file.whole(), "a header and no rows", allowed, "write the rows");
      return false;
    }
    return all && !cells.broken();
  }

  /** Whether a row has a cell for each column; empty ones beyond them do no harm. */
  private static boolean fits(List<CsvCells.Cell> row, CsvHeader header, Problems problems) {
    int width = row.size();
    while (width > header.width() && row.get(width - 1).text().isEmpty()) {
      width--;
    }
    if (width == header.width()) {
      return true;
    }
    int odd = Math.min(header.width(), width - 1);
    problems.add(
        row.get(odd).place(),
        width + " cells in this row",
        "the header has " + header.width() + " columns",
        width < header.width()
            ? "add what is missing, or the separators of empty cells"
            : "remove what is too much, or put quotes round a cell that holds a separator");
    return false;
  }
}
