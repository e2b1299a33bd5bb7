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

  /** The first text of the row; an empty one if it has none. */
  String first() {
    for (Cell cell : cells) {
      if (!cell.empty()) {
        return cell.text();
      }
    }
    return "";
  }

  /** How many cells have text. */
  int filled() {
    int filled = 0;
    for (Cell cell : cells) {
      filled += cell.empty() ? 0 : 1;
    }
    return filled;
  }
}
