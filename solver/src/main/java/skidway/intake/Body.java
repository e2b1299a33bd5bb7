package skidway.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The rows of a list that are timbers, and those that are not: totals, footnotes, repeated headers.
 * Every row left out is told; a row that looks like a spoiled timber is kept, so that it is
 * complained about.
 */
record Body(List<ListRow> rows, List<String> leftOut) {
  private static final Set<String> TOTALS =
      Set.of(
          "total",
          "totals",
          "sum",
          "grand total",
          "subtotal",
          "sub total",
          "summe",
          "gesamt",
          "gesamtsumme",
          "zwischensumme",
          "somme",
          "suma",
          "totalt",
          "summa",
          "yhteensa",
          "sum totalt",
          "razem",
          "итого",
          "всего",
          "sous total",
          "total general");

  private static final List<Meaning> TIMBER =
      List.of(Meaning.MARK, Meaning.WALL, Meaning.COURSE, Meaning.POSITION, Meaning.LENGTH);

  private static final Set<Meaning> NEVER_EMPTY =
      Set.of(
          Meaning.MARK,
          Meaning.COURSE,
          Meaning.LENGTH,
          Meaning.WIDTH,
          Meaning.HEIGHT,
          Meaning.SECTION);

  static Body of(Grid grid, Header header, ListTable table) {
    List<ListRow> rows = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    for (ListRow row : Columns.body(grid, header)) {
      String why = why(row, header, table);
      if (why.isEmpty()) {
        rows.add(row);
      } else {
        leftOut.add("row " + row.number() + " (" + why + "): " + Trouble.quote(row.first()));
      }
    }
    return new Body(rows, leftOut);
  }

  /** Why a row is no timber; empty if it is one. */
  private static String why(ListRow row, Header header, ListTable table) {
    if (header.found() && repeats(row, header)) {
      return "the header again";
    }
    if (lacksSomething(row, table) && row.cells().stream().anyMatch(c -> isTotal(c.text()))) {
      return "a total";
    }
    if (row.filled() == 1 && table.columns().size() > 1) {
      return "a note";
    }
    return hasTimber(row, table) ? "" : "nothing of a timber in it";
  }

  private static boolean hasTimber(ListRow row, ListTable table) {
    for (Meaning meaning : TIMBER) {
      if (table.columns().containsKey(meaning) && !table.text(row, meaning).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** A timber in a wall called "Total" has all that timbers have. */
  private static boolean lacksSomething(ListRow row, ListTable table) {
    for (Meaning meaning : table.columns().keySet()) {
      if (NEVER_EMPTY.contains(meaning) && table.text(row, meaning).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private static boolean repeats(ListRow row, Header header) {
    for (int i = 0; i < header.texts().size(); i++) {
      if (!row.text(i).equals(header.text(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isTotal(String text) {
    String plain = Headline.plain(text);
    return TOTALS.contains(plain)
        || TOTALS.stream().anyMatch(t -> plain.startsWith(t + " ") && text.contains(":"));
  }
}
