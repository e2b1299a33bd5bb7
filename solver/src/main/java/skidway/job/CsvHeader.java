package skidway.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import skidway.units.Nearest;

/** The first line of a table: which column stands where. Order and case make no difference. */
record CsvHeader(Map<String, Integer> indexes, int width) {

  /** Reads the header; empty if a required column is missing. */
  static Optional<CsvHeader> read(
      List<CsvCells.Cell> cells, List<String> required, List<String> optional, Problems problems) {
    Map<String, Integer> indexes = new LinkedHashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      CsvCells.Cell cell = cells.get(i);
      String name = plain(cell.text());
      boolean known = required.contains(name) || optional.contains(name);
      if (known && indexes.putIfAbsent(name, i) != null) {
        problems.add(
            cell.place(),
            "a second column \"" + name + '"',
            "each column stands once",
            "remove one of them");
      } else if (!known && !name.isEmpty()) {
        List<String> all = new ArrayList<>(required);
        all.addAll(optional);
        problems.remark(
            cell.place(),
            "an unknown column \"" + Quote.shortened(cell.text()) + '"' + Nearest.hint(name, all),
            "it is not read",
            "remove it or correct its name");
      }
    }
    List<String> missing = required.stream().filter(r -> !indexes.containsKey(r)).toList();
    if (missing.isEmpty()) {
      return Optional.of(new CsvHeader(indexes, cells.size()));
    }
    report(cells, required, missing, problems);
    return Optional.empty();
  }

  /** One problem for each missing column, or a single one if the line is no header at all. */
  private static void report(
      List<CsvCells.Cell> cells, List<String> required, List<String> missing, Problems problems) {
    List<String> found = cells.stream().map(CsvCells.Cell::text).filter(t -> !t.isEmpty()).toList();
    String columns = Quote.shortened(String.join(", ", found));
    String allowed = "the columns are " + String.join(", ", required) + ", in any order";
    Place place = cells.get(0).place();
    if (missing.size() == required.size()) {
      problems.add(
          place, "no header but \"" + columns + '"', allowed, "write the header as the first line");
      return;
    }
    for (String name : missing) {
      problems.add(
          place,
          "no column \"" + name + "\" among " + columns + Nearest.hint(name, found),
          allowed,
          "add the column or correct its name");
    }
  }

  static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[ -]+", "_");
  }
}
