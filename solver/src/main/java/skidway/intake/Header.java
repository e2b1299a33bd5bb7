package skidway.intake;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The header of a list: the row with most column words among the first ones, and the row of units
 * that may stand below it.
 *
 * @param rowIndex its place among the grid's rows; -1 if the list has none
 * @param lines taken apart, column by column
 * @param firstRow index of the first row after it
 */
record Header(int rowIndex, List<String> texts, List<Headline> lines, int firstRow) {
  /** Titles, addresses and dates above a table seldom take more. */
  private static final int ROWS_LOOKED_AT = 60;

  /**
   * Finds the header.
   *
   * @param told its row as a person counts them, if somebody says so
   */
  static Header find(Grid grid, OptionalInt told) {
    int best = -1;
    int most = 1;
    for (int i = 0; i < Math.min(ROWS_LOOKED_AT, grid.rows().size()); i++) {
      if (told.isPresent()) {
        if (grid.rows().get(i).number() == told.getAsInt()) {
          return at(grid, i);
        }
      } else {
        int meanings = meanings(grid.rows().get(i));
        if (meanings > most) {
          most = meanings;
          best = i;
        }
      }
    }
    if (told.isPresent()) {
      throw Trouble.of(
          grid.fileName(),
          "no text in row " + told.getAsInt() + ", or too far down for a header",
          "the header is one of the first " + ROWS_LOOKED_AT + " rows with text",
          "correct --header");
    }
    return best < 0 ? new Header(-1, List.of(), List.of(), 0) : at(grid, best);
  }

  private static int meanings(ListRow row) {
    Set<Meaning> found = EnumSet.noneOf(Meaning.class);
    for (Cell cell : row.cells()) {
      if (cell.number() || cell.empty()) {
        continue;
      }
      HeaderWords.named(Headline.of(cell.text())).ifPresent(found::add);
    }
    return found.size();
  }

  private static Header at(Grid grid, int index) {
    ListRow row = grid.rows().get(index);
    List<String> texts = new ArrayList<>();
    List<Headline> lines = new ArrayList<>();
    Optional<ListRow> units = units(grid, index + 1);
    int width = grid.width();
    for (int i = 0; i < width; i++) {
      String text = row.text(i);
      Headline line = Headline.of(text);
      Optional<ListUnit> below = unit(units, i);
      texts.add(text);
      lines.add(line.unit().isEmpty() ? new Headline(line.words(), below) : line);
    }
    return new Header(index, texts, lines, index + (units.isPresent() ? 2 : 1));
  }

  private static Optional<ListUnit> unit(Optional<ListRow> units, int column) {
    return units.flatMap(u -> ListUnit.of(bare(u.text(column))));
  }

  /** The row of units below a header: nothing but units, empty cells and percent signs. */
  private static Optional<ListRow> units(Grid grid, int index) {
    if (index >= grid.rows().size()) {
      return Optional.empty();
    }
    ListRow row = grid.rows().get(index);
    boolean all =
        row.cells().stream()
            .map(c -> bare(c.text()))
            .allMatch(
                t ->
                    t.isEmpty()
                        || t.equals("%")
                        || t.equals("-")
                        || t.equals("pcs")
                        || ListUnit.of(t).isPresent());
    boolean any = row.cells().stream().anyMatch(c -> ListUnit.of(bare(c.text())).isPresent());
    return all && any ? Optional.of(row) : Optional.empty();
  }

  private static String bare(String text) {
    return text.replaceAll("[()\\[\\]]", "").strip();
  }

  boolean found() {
    return rowIndex >= 0;
  }

  Headline line(int column) {
    return column < lines.size() ? lines.get(column) : new Headline("", Optional.empty());
  }

  String text(int column) {
    return column < texts.size() ? texts.get(column) : "";
  }
}
