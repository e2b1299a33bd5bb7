package skidway.cli;

import java.util.ArrayList;
import java.util.List;

/** Lays rows out in columns: words to the left, figures to the right. */
final class TextTable {
  private final List<List<String>> rows = new ArrayList<>();
  private final boolean[] figures;

  /**
   * @param heads column heads; one that starts with {@code >} is a column of figures
   */
  TextTable(String... heads) {
    figures = new boolean[heads.length];
    List<String> head = new ArrayList<>();
    for (int i = 0; i < heads.length; i++) {
      figures[i] = heads[i].startsWith(">");
      head.add(figures[i] ? heads[i].substring(1) : heads[i]);
    }
    rows.add(head);
  }

  void row(String... cells) {
    if (cells.length != figures.length) {
      throw new IllegalArgumentException("A row needs " + figures.length + " cells.");
    }
    rows.add(List.of(cells));
  }

  List<String> lines() {
    int[] widths = new int[figures.length];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    return rows.stream().map(row -> line(row, widths)).toList();
  }

  private String line(List<String> row, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      String gap = " ".repeat(widths[i] - row.get(i).length());
      line.append(i == 0 ? "" : "  ");
      line.append(figures[i] ? gap + row.get(i) : row.get(i) + gap);
    }
    return line.toString().stripTrailing();
  }
}
