package skidway.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

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
        String first =
            row.cells().stream().map(Cell::text).filter(t -> !t.isEmpty()).findFirst().orElse("");
        leftOut.add("row " + row.number() + " (" + why + "): " + Trouble.quote(first));
      }
    }
    return new Body(rows, leftOut);
  }

  /** Why a row is no timber; empty if it is one. */
  private static String why(ListRow row, Header header, ListTable table) {
    List<String> texts = row.cells().stream().map(Cell::text).filter(t -> !t.isEmpty()).toList();
    if (header.found() && repeats(row, header)) {
      return "the header again";
    }
    if (lacksSomething(row, table) && texts.stream().anyMatch(Body::isTotal)) {
      return "a total";
    }
    if (texts.size() == 1 && table.columns().size() > 1) {
      return "a note";
    }
    Stream<Meaning> own = TIMBER.stream().filter(m -> table.columns().containsKey(m));
    boolean figuresOnly = own.allMatch(m -> table.text(row, m).isEmpty());
    return figuresOnly ? "nothing of a timber in it" : "";
  }

  /** A timber in a wall called "Total" has all that timbers have. */
  private static boolean lacksSomething(ListRow row, ListTable table) {
    return table.columns().keySet().stream()
        .filter(NEVER_EMPTY::contains)
        .anyMatch(m -> table.text(row, m).isEmpty());
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
