package skidway.intake;

import java.util.List;

/**
 * One row of a list.
 *
 * @param number row of the sheet or line of the file, as a person finds it there
 */
record ListRow(int number, List<Cell> cells) {
  /** The cell of a column counted from 0; an empty one beyond the row's end. */
  Cell cell(int column) {
    return column < cells.size() ? cells.get(column) : new Cell("", false, number, column + 1);
  }

  String text(int column) {
    return cell(column).text();
  }

  /** How many cells have text. */
  int filled() {
    return (int) cells.stream().filter(c -> !c.empty()).count();
  }
}
