package skidway.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A table of the job as it stands in its file, cell by cell as text, to add rows to and take rows
 * from. Columns that Skidway does not know stay.
 *
 * @param columns as the header writes them
 * @param rows each with a cell for every column
 */
public record JobTable(List<String> columns, List<List<String>> rows, char separator) {
  /** The table of a file; of no file, a table with the columns asked for and no rows. */
  static JobTable of(Optional<SourceFile> file, List<String> columns) {
    if (file.isEmpty()) {
      return new JobTable(columns, List.of(), ',');
    }
    String text = file.get().text();
    char separator = Separator.of(text.stripLeading().lines().findFirst().orElse(""));
    List<List<String>> all =
        TextRows.read(file.get().name(), text, separator, CsvCells.LONGEST_CELL).stream()
            .map(row -> row.stream().map(TextRows.Cell::text).toList())
            .toList();
    List<String> head = all.get(0);
    List<List<String>> rows =
        all.stream().skip(1).map(row -> resized(row, head.size())).toList();
    return new JobTable(head, rows, separator);
  }

  private static List<String> resized(List<String> row, int width) {
    List<String> cells = new ArrayList<>(row.subList(0, Math.min(width, row.size())));
    while (cells.size() < width) {
      cells.add("");
    }
    return List.copyOf(cells);
  }

  /** A cell by its column's name; an empty text if there is no such column. */
  public String cell(List<String> row, String column) {
    int index = index(columns, column);
    return index < 0 ? "" : row.get(index);
  }

  /** A row as values by column, named in lower case. */
  public Map<String, String> values(List<String> row) {
    Map<String, String> values = new LinkedHashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      values.putIfAbsent(CsvHeader.plain(columns.get(i)), row.get(i));
    }
    return values;
  }

  /** The rows that pass. */
  public JobTable keeping(Predicate<List<String>> wanted) {
    return new JobTable(columns, rows.stream().filter(wanted).toList(), separator);
  }

  /** The table with more rows, each a value by column; columns it lacks are added at the end. */
  public JobTable with(List<Map<String, String>> more) {
    Set<String> wider = new LinkedHashSet<>(columns);
    for (Map<String, String> row : more) {
      row.forEach(
          (column, value) -> {
            if (!value.isEmpty() && index(columns, column) < 0) {
              wider.add(column);
            }
          });
    }
    List<String> head = List.copyOf(wider);
    List<List<String>> all = new ArrayList<>();
    rows.forEach(row -> all.add(resized(row, head.size())));
    for (Map<String, String> row : more) {
      all.add(head.stream().map(c -> row.getOrDefault(CsvHeader.plain(c), "")).toList());
    }
    return new JobTable(head, List.copyOf(all), separator);
  }

  /** The whole table as text; row {@code i} is line {@code i + 2}. */
  public String text() {
    StringBuilder text = new StringBuilder(CsvText.row(columns, separator)).append('\n');
    rows.forEach(row -> text.append(CsvText.row(row, separator)).append('\n'));
    return text.toString();
  }

  private static int index(List<String> columns, String column) {
    for (int i = 0; i < columns.size(); i++) {
      if (CsvHeader.plain(columns.get(i)).equals(column)) {
        return i;
      }
    }
    return -1;
  }
}
