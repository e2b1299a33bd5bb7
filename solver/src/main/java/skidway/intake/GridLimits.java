package skidway.intake;

import java.util.List;
import skidway.job.BadInput;

/** Refuses lists with more rows, columns or text than any packing list has. */
final class GridLimits {
  private GridLimits() {}

  static void check(String fileName, List<ListRow> rows) {
    if (rows.size() > ListLimits.MOST_ROWS) {
      throw tooMuch(fileName, "more than " + ListLimits.MOST_ROWS + " rows");
    }
    long cells = 0;
    for (ListRow row : rows) {
      if (row.cells().size() > ListLimits.MOST_COLUMNS) {
        throw tooMuch(
            fileName, "more than " + ListLimits.MOST_COLUMNS + " columns in row " + row.number());
      }
      cells += row.filled();
    }
    if (cells > ListLimits.MOST_CELLS) {
      throw tooMuch(fileName, "more than " + ListLimits.MOST_CELLS + " cells");
    }
  }

  static BadInput tooMuch(String fileName, String found) {
    return Trouble.of(
        fileName,
        found,
        "a packing list has fewer",
        "look whether this is the right file, or split it");
  }
}
