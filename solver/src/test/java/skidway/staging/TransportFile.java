package skidway.staging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reads a loading problem with costs: the number of items, of stacks, and the most items of a
 * stack; for each item a row of 0 and 1, whether it may lie on each item; for each item a row of
 * what it costs on each stack; a row of places of stacks, one of places of items, and one with the
 * length and width of each item, all of them as {@code (x,y)}. Empty lines do not count.
 */
final class TransportFile {
  /** A cost from here on says that an item is not allowed on a stack. */
  private static final double NOT_ALLOWED = 1e6;

  private static final int MOST_ITEMS = 10_000;

  /** A line that is not empty. */
  private record Line(int number, String text) {}

  private final Path file;
  private final List<Line> lines = new ArrayList<>();
  private int next;

  private TransportFile(Path file, List<String> all) {
    this.file = file;
    for (int i = 0; i < all.size(); i++) {
      if (!all.get(i).isBlank()) {
        lines.add(new Line(i + 1, all.get(i).trim()));
      }
    }
  }

  static Transport read(Path file) throws IOException {
    return new TransportFile(file, Files.readAllLines(file)).transport();
  }

  private Transport transport() {
    int items = whole("how many items there are");
    int stacks = whole("how many stacks there are");
    int tiers = whole("how many items a stack holds");
    boolean[][] mayLieOn = new boolean[items][];
    for (int i = 0; i < items; i++) {
      mayLieOn[i] = yesOrNo(items);
    }
    double[][] cost = new double[items][];
    for (int i = 0; i < items; i++) {
      cost[i] = costs(stacks);
    }
    pairs("places of items or stacks");
    pairs("places of items or stacks");
    Line line = line("the length and width of each item");
    double[][] sizes = pairs(line);
    if (sizes.length != items) {
      throw wrong(line, sizes.length + " sizes where " + items + " belong, one an item");
    }
    if (next < lines.size()) {
      throw wrong(lines.get(next), "more than the format has");
    }
    return new Transport(stacks, tiers, mayLieOn, cost, sizes);
  }

  private Line line(String what) {
    if (next == lines.size()) {
      throw new IllegalArgumentException(file + ": ends before the line that tells " + what + ".");
    }
    return lines.get(next++);
  }

  private int whole(String what) {
    Line line = line(what);
    double number = number(line, line.text());
    if (number != Math.rint(number) || number < 1 || number > MOST_ITEMS) {
      throw wrong(
          line,
          "\""
              + line.text()
              + "\" where a whole number from 1 to "
              + MOST_ITEMS
              + " tells "
              + what);
    }
    return (int) number;
  }

  private boolean[] yesOrNo(int items) {
    Line line = line("who may lie on whom");
    double[] row = numbers(line, items, "0 or 1, one an item,");
    boolean[] yes = new boolean[items];
    for (int j = 0; j < items; j++) {
      if (row[j] != 0 && row[j] != 1) {
        throw wrong(line, row[j] + " where 0 or 1 belongs");
      }
      yes[j] = row[j] == 1;
    }
    return yes;
  }

  private double[] costs(int stacks) {
    Line line = line("what an item costs on each stack");
    double[] row = numbers(line, stacks, "costs, one a stack,");
    for (int s = 0; s < stacks; s++) {
      if (row[s] < 0) {
        throw wrong(line, row[s] + " where a cost belongs, 0 or more");
      }
      row[s] = row[s] >= NOT_ALLOWED ? Double.POSITIVE_INFINITY : row[s];
    }
    return row;
  }

  private double[] numbers(Line line, int count, String what) {
    String[] cells = line.text().split("\\s+", -1);
    if (cells.length != count) {
      throw wrong(line, cells.length + " numbers where " + count + " " + what + " belong");
    }
    return Stream.of(cells).mapToDouble(cell -> number(line, cell)).toArray();
  }

  private void pairs(String what) {
    pairs(line(what));
  }

  private double[][] pairs(Line line) {
    return Arrays.stream(line.text().split("\\s+"))
        .map(cell -> pair(line, cell))
        .toArray(double[][]::new);
  }

  private double[] pair(Line line, String cell) {
    String[] both = cell.replaceAll("^\\(|\\)$", "").split(",", -1);
    if (both.length != 2 || !cell.startsWith("(") || !cell.endsWith(")")) {
      throw wrong(line, "\"" + cell + "\" where (x,y) belongs");
    }
    return new double[] {number(line, both[0]), number(line, both[1])};
  }

  private double number(Line line, String text) {
    if (!text.matches("-?\\d{1,9}(\\.\\d{1,9})?")) {
      throw wrong(line, "\"" + text + "\" where a number belongs");
    }
    return Double.parseDouble(text);
  }

  private IllegalArgumentException wrong(Line line, String what) {
    return new IllegalArgumentException(file + ":" + line.number() + ": " + what + ".");
  }
}
