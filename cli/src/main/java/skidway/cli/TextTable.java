package skidway.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Lays rows out in columns: words to the left, figures to the right. */
final class TextTable {
  private sealed interface Row {}

  private record Cells(List<String> cells) implements Row {}

  private record Note(List<String> lines) implements Row {}

  private final List<Row> rows = new ArrayList<>();
  private final boolean[] figures;
  private final int[] most;

  /**
   * @param heads column heads; one that starts with {@code >} is a column of figures
   */
  TextTable(String... heads) {
    figures = new boolean[heads.length];
    most = new int[heads.length];
    Arrays.fill(most, Integer.MAX_VALUE);
    List<String> head = new ArrayList<>();
    for (int i = 0; i < heads.length; i++) {
      figures[i] = heads[i].startsWith(">");
      head.add(figures[i] ? heads[i].substring(1) : heads[i]);
    }
    rows.add(new Cells(head));
  }

  /** Breaks what is longer in a column, counted from 0, between words. */
  TextTable narrow(int column, int characters) {
    most[column] = characters;
    return this;
  }

  void row(String... cells) {
    if (cells.length != figures.length) {
      throw new IllegalArgumentException("A row needs " + figures.length + " cells.");
    }
    rows.add(new Cells(List.of(cells)));
  }

  /** Lines that stand between rows and keep to no column. */
  void note(List<String> lines) {
    rows.add(new Note(List.copyOf(lines)));
  }

  List<String> lines() {
    int[] widths = new int[figures.length];
    for (Row row : rows) {
      if (row instanceof Cells cells) {
        for (int i = 0; i < widths.length; i++) {
          int column = i;
          parts(cells, i).forEach(p -> widths[column] = Math.max(widths[column], p.length()));
        }
      }
    }
    return rows.stream().flatMap(row -> lines(row, widths).stream()).toList();
  }

  private List<String> lines(Row row, int[] widths) {
    if (row instanceof Note note) {
      return note.lines();
    }
    Cells cells = (Cells) row;
    List<String> lines = new ArrayList<>();
    int height = 1;
    for (int i = 0; i < figures.length; i++) {
      height = Math.max(height, parts(cells, i).size());
    }
    for (int level = 0; level < height; level++) {
      lines.add(line(cells, level, widths));
    }
    return lines;
  }

  private String line(Cells row, int level, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      List<String> parts = parts(row, i);
      String part = level < parts.size() ? parts.get(level) : "";
      String gap = " ".repeat(widths[i] - part.length());
      line.append(i == 0 ? "" : "  ");
      line.append(figures[i] ? gap + part : part + gap);
    }
    return line.toString().stripTrailing();
  }

  private List<String> parts(Cells row, int column) {
    String cell = row.cells().get(column);
    return cell.length() <= most[column] ? List.of(cell) : Wrap.words(cell, most[column]);
  }
}
