package skidway.job;

import java.util.ArrayList;
import java.util.List;

/** Reads rows of separated values from a text, whatever the columns are called. */
public final class TextRows {
  private TextRows() {}

  /**
   * One cell, stripped, and where it begins.
   *
   * @param line 1 is the first
   * @param column character of the line, 1 is the first
   */
  public record Cell(String text, int line, int column) {}

  /**
   * All rows with any text in them.
   *
   * @param text with line feeds as line ends
   * @param longest most characters of a cell
   * @throws BadInput if quotes do not match, or a cell is too long
   */
  public static List<List<Cell>> read(String fileName, String text, char separator, int longest) {
    Problems problems = new Problems();
    List<List<Cell>> rows = new ArrayList<>();
    SourceFile file = new SourceFile(fileName, text);
    try (CsvCells cells = new CsvCells(file, problems, separator, longest)) {
      for (List<CsvCells.Cell> row = cells.next(); !row.isEmpty(); row = cells.next()) {
        List<Cell> plain = new ArrayList<>(row.size());
        for (CsvCells.Cell cell : row) {
          plain.add(new Cell(cell.text(), cell.place().line(), cell.place().column()));
        }
        rows.add(plain);
      }
    }
    problems.throwIfAny(List.of(fileName));
    return rows;
  }
}
