package skidway.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import skidway.job.SavedList;

/**
 * Takes each column for what its header and its cells say. What a person says wins, then what was
 * said of an earlier list with the same header, then the best match of words and cells. Every
 * meaning has one column and every column one meaning.
 */
final class Columns {
  /** Below this a match is a guess not worth making (assumption). */
  private static final double LEAST_MATCH = 0.4;

  /** What cells say alone counts less than any word above them. */
  private static final double ALONE = 0.5;

  private final Header header;
  private final List<ColumnLook> looks = new ArrayList<>();
  private final Column[] columns;

  private Columns(Grid grid, Header header, Set<String> walls, Predicate<String> wood) {
    this.header = header;
    this.columns = new Column[grid.width()];
    for (int i = 0; i < columns.length; i++) {
      int column = i;
      List<Cell> cells =
          grid.rows().stream()
              .skip(header.firstRow())
              .limit(ColumnLook.ROWS_LOOKED_AT)
              .map(r -> r.cell(column))
              .filter(c -> !c.empty() && !c.text().equals(header.text(column)))
              .toList();
      looks.add(new ColumnLook(cells, walls, wood));
      columns[i] =
          new Column(
              i,
              header.text(i),
              cells.stream().limit(3).map(Cell::text).toList(),
              Optional.empty(),
              header.text(i).isEmpty() ? "no header" : "no known word",
              header.line(i).unit());
    }
  }

  /** Proposes what the columns are. */
  static List<Column> propose(
      Grid grid,
      Header header,
      Wishes wishes,
      Optional<SavedList> saved,
      Set<String> walls,
      Predicate<String> wood) {
    Columns proposal = new Columns(grid, header, walls, wood);
    Set<Meaning> settled = new TreeSet<>();
    Trouble trouble = new Trouble(grid.fileName());
    wishes.columns().forEach((word, column) -> proposal.told(word, column, settled, trouble));
    wishes.constants().keySet().forEach(w -> Meaning.of(w).ifPresent(settled::add));
    trouble.throwIfAny();
    if (saved.isPresent()) {
      proposal.saved(saved.get(), settled);
    } else {
      proposal.match(settled);
    }
    proposal.resolveThickness();
    return List.of(proposal.columns);
  }

  private void told(String word, String column, Set<Meaning> settled, Trouble trouble) {
    Optional<Meaning> meaning = Meaning.of(word);
    if (meaning.isEmpty()) {
      trouble.add(
          "an unknown field " + Trouble.quote(word),
          "a column is taken for one of " + Meaning.words(),
          "write --column FIELD=COLUMN, such as --column length=E");
      return;
    }
    settled.add(meaning.get());
    if (column.equalsIgnoreCase("none")) {
      return;
    }
    int index = index(column);
    if (index < 0) {
      trouble.add(
          "no column " + Trouble.quote(column),
          "the columns are " + names(),
          "write its letter, number or header, or none");
      return;
    }
    columns[index] = columns[index].as(meaning, "you said so");
  }

  /** The column of a header text, letter or number; -1 if there is none. */
  private int index(String column) {
    List<Integer> named =
        IntStream.range(0, columns.length)
            .filter(i -> column.length() > 1 || Column.indexOf(column) < 0)
            .filter(
                i ->
                    !columns[i].header().isEmpty()
                        && Headline.plain(columns[i].header()).equals(Headline.plain(column)))
            .boxed()
            .toList();
    if (!named.isEmpty()) {
      return named.get(0);
    }
    int index = column.matches("\\d{1,3}") ? Integer.parseInt(column) - 1 : Column.indexOf(column);
    return index < columns.length ? index : -1;
  }

  private String names() {
    return IntStream.range(0, columns.length)
        .mapToObj(i -> Column.letter(i) + " " + Trouble.quote(columns[i].header()))
        .collect(Collectors.joining(", "));
  }

  private void saved(SavedList list, Set<Meaning> settled) {
    for (SavedList.Column column : list.columns()) {
      int index = column.number() - 1;
      Optional<Meaning> meaning = Meaning.of(column.meaning());
      if (index >= columns.length || meaning.isEmpty() || settled.contains(meaning.get())) {
        continue;
      }
      if (columns[index].meaning().isEmpty()) {
        columns[index] =
            columns[index]
                .as(meaning, "as in \"" + list.name() + '"')
                .in(column.unit().flatMap(ListUnit::of));
        settled.add(meaning.get());
      }
    }
  }

  private record Match(int column, Meaning meaning, double score, boolean byWord) {}

  private void match(Set<Meaning> settled) {
    List<Match> matches = new ArrayList<>();
    for (int i = 0; i < columns.length; i++) {
      Headline line = header.line(i);
      boolean named = HeaderWords.named(line).isPresent();
      for (Meaning meaning : Meaning.values()) {
        double word = HeaderWords.match(line, meaning);
        double byWord = word == 0 ? 0 : word * (0.3 + 0.7 * looks.get(i).fit(meaning));
        double alone = !named && looks.get(i).alone(meaning) > 0.9 ? ALONE : 0;
        double score = Math.max(byWord, alone);
        if (score >= LEAST_MATCH) {
          matches.add(new Match(i, meaning, score, byWord >= alone));
        }
      }
    }
    matches.sort(
        Comparator.comparingDouble(Match::score)
            .reversed()
            .thenComparing(Match::column)
            .thenComparing(Match::meaning));
    for (Match match : matches) {
      if (columns[match.column()].meaning().isEmpty() && settled.add(match.meaning())) {
        columns[match.column()] =
            columns[match.column()].as(
                Optional.of(match.meaning()), match.byWord() ? "header" : "its cells");
      }
    }
  }

  /**
   * A thickness is the smaller side and lies across the wall: it is the width, and a width beside
   * it the height, unless there is a height too (common practice).
   */
  private void resolveThickness() {
    Map<Meaning, Integer> at = new EnumMap<>(Meaning.class);
    for (Column column : columns) {
      column.meaning().ifPresent(m -> at.put(m, column.index()));
    }
    Integer thickness = at.get(Meaning.THICKNESS);
    if (thickness == null) {
      return;
    }
    Integer width = at.get(Meaning.WIDTH);
    if (width != null && at.containsKey(Meaning.HEIGHT)) {
      columns[thickness] = columns[thickness].as(Optional.empty(), "width and height are there");
      return;
    }
    if (width != null) {
      columns[width] =
          columns[width].as(Optional.of(Meaning.HEIGHT), "the larger side beside a thickness");
    }
    columns[thickness] =
        columns[thickness].as(Optional.of(Meaning.WIDTH), "thickness, across the wall");
  }

  /** The rows below the header. */
  static List<ListRow> body(Grid grid, Header header) {
    return grid.rows().subList(Math.min(header.firstRow(), grid.rows().size()), grid.rows().size());
  }
}
