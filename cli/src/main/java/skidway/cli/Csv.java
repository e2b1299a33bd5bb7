package skidway.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes rows of comma-separated values. */
final class Csv {
  private Csv() {}

  static String row(String... cells) {
    return Arrays.stream(cells).map(Csv::quoted).collect(Collectors.joining(","));
  }

  /** A figure in SI units, with a point whatever the machine's locale. */
  static String figure(double value) {
    return Double.isFinite(value) ? String.format(Locale.ROOT, "%.4f", value) : "";
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
