package skidway.job;

import java.util.ArrayList;
import java.util.HashSet;
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
 */
public final class JobTable {
  private final List<String> columns;
  private final List<List<String>> rows;
  private final char separator;

  /** Names of the columns in lower case, and where they stand. */
  private final Map<String, Integer> indexes = new LinkedHashMap<>();

  /** Names of the columns that the job's reader reads. */
  private final Set<String> read;

  private JobTable(
      List<String> columns, List<List<String>> rows, char separator, Set<String> read) {
    this.read = Set.copyOf(read);
    this.columns = List.copyOf(columns);
    this.rows = List.copyOf(rows);
    this.separator = separator;
    for (int i = 0; i < columns.size(); i++) {
      indexes.putIfAbsent(CsvHeader.plain(columns.get(i)), i);
    }
  }

  /** The columns as the header writes them. */
  public List<String> columns() {
    return columns;
  }

  /** The rows, each with a cell for every column. */
  public List<List<String>> rows() {
    return rows;
  }

  /** What stands between cells. */
  public char separator() {
    return separator;
  }

  /** The table of a file; of no file, a table with the required columns and no rows. */
  static JobTable of(Optional<SourceFile> file, List<String> required, List<String> optional) {
    Set<String> read = new HashSet<>(required);
    read.addAll(optional);
    if (file.isEmpty()) {
      return new JobTable(required, List.of(), ',', read);
    }
    String text = file.get().text();
    char separator = Separator.of(text.stripLeading().lines().findFirst().orElse(""));
    List<List<String>> all =
        TextRows.read(file.get().name(), text, separator, FileBounds.LONGEST_CELL).stream()
            .map(row -> row.stream().map(TextRows.Cell::text).toList())
            .toList();
    List<String> head = all.get(0);
    List<List<String>> rows = all.stream().skip(1).map(row -> resized(row, head.size())).toList();
    return new JobTable(head, rows, separator, read);
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
    Integer index = indexes.get(column);
    return index == null ? "" : row.get(index);
  }

  /** A row as values by column, named in lower case. */
  public Map<String, String> values(List<String> row) {
    Map<String, String> values = new LinkedHashMap<>();
    indexes.forEach((name, index) -> values.put(name, row.get(index)));
    return values;
  }

  /** Of a row's values those in columns that Skidway does not read: they are people's own. */
  public Map<String, String> own(Map<String, String> values) {
    Map<String, String> own = new LinkedHashMap<>(values);
    own.keySet().removeAll(read);
    return own;
  }

  /** The rows that pass. */
  public JobTable keeping(Predicate<List<String>> wanted) {
    return new JobTable(columns, rows.stream().filter(wanted).toList(), separator, read);
  }

  /** The table with more rows, each a value by column; columns it lacks are added at the end. */
  public JobTable with(List<Map<String, String>> more) {
    Set<String> wider = new LinkedHashSet<>(columns);
    for (Map<String, String> row : more) {
      row.forEach(
          (column, value) -> {
            if (!value.isEmpty() && !indexes.containsKey(column)) {
              wider.add(column);
            }
          });
    }
    List<String> head = List.copyOf(wider);
    List<List<String>> all = new ArrayList<>();
    rows.forEach(row -> all.add(resized(row, head.size())));
    List<String> names = head.stream().map(CsvHeader::plain).toList();
    for (Map<String, String> row : more) {
      List<String> cells = new ArrayList<>(names.size());
      for (String name : names) {
        cells.add(row.getOrDefault(name, ""));
      }
      all.add(List.copyOf(cells));
    }
    return new JobTable(head, List.copyOf(all), separator, read);
  }

  /** The whole table as text; row {@code i} is line {@code i + 2}. */
  public String text() {
    StringBuilder text = new StringBuilder(CsvText.row(columns, separator)).append('\n');
    rows.forEach(row -> text.append(CsvText.row(row, separator)).append('\n'));
    return text.toString();
  }
}
