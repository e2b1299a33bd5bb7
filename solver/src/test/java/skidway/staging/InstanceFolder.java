package skidway.staging;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A folder with published instances that are no part of this project, because their licences do not
 * allow it or say nothing: a folder for each set, and beside them what is known of them.
 *
 * <p>{@code optima.csv} has the columns instance (set and file name), objective, optimum; {@code
 * solutions.csv} instance, objective, value, solution (the stack of each item, from 1); {@code
 * evaluator_checks.csv} instance, assignment, badly_placed. Each has one line of headings; more
 * columns do not matter.
 */
final class InstanceFolder {
  static final String PROPERTY = "skidway.bench.instances";

  static final String HOW_TO =
      "Skipped: -D"
          + PROPERTY
          + "=DIR names the folder with the published instances: pslp-conflicts/*.json,"
          + " slp-transport/*.txt, optima.csv, solutions.csv, evaluator_checks.csv."
          + " They may not be copied into the project.";

  /** A plan whose count is known: the stack of each item, from 0. */
  record Check(String instance, String objective, List<Integer> stackOf, double value) {
    Check {
      stackOf = List.copyOf(stackOf);
    }
  }

  private final Path root;

  InstanceFolder(Path root) {
    this.root = root;
  }

  /** The folder that was named; nothing if none was. */
  static Optional<InstanceFolder> named() {
    return Optional.ofNullable(System.getProperty(PROPERTY)).map(Path::of).map(InstanceFolder::new);
  }

  /** The files of a set by name. */
  List<Path> files(String set, String ending) throws IOException {
    Path folder = root.resolve(set);
    if (!Files.isDirectory(folder)) {
      throw new IllegalArgumentException("There is no folder " + folder + ".");
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  /** The file of an instance, which is told by its set and name. */
  Path file(String instance) {
    return root.resolve(instance);
  }

  /** What is known to be the best of an instance; nothing if it is not known. */
  Optional<Double> optimum(String instance, String objective) throws IOException {
    for (String[] row : table("optima.csv", "instance", "objective", "optimum")) {
      if (row[0].equals(instance) && row[1].equals(objective)) {
        return Optional.of(number("optima.csv", row[2]));
      }
    }
    return Optional.empty();
  }

  /** Plans of a set that are counted in its tables of solutions and checks. */
  List<Check> checks(String set) throws IOException {
    List<Check> checks = new ArrayList<>();
    for (String[] row : table("solutions.csv", "instance", "objective", "value", "solution")) {
      if (row[0].startsWith(set + "/")) {
        checks.add(check("solutions.csv", row[0], row[1], row[3], row[2]));
      }
    }
    String file = "evaluator_checks.csv";
    for (String[] row : table(file, "instance", "assignment", "badly_placed")) {
      if (row[0].startsWith(set + "/")) {
        checks.add(check(file, row[0], "badly_placed", row[1], row[2]));
      }
    }
    return checks;
  }

  private Check check(String file, String instance, String objective, String plan, String value) {
    List<Integer> stackOf =
        Stream.of(plan.trim().split("\\s+")).map(cell -> (int) number(file, cell) - 1).toList();
    return new Check(instance, objective, stackOf, number(file, value));
  }

  private double number(String file, String text) {
    if (!text.matches("\\d{1,9}(\\.\\d{1,9})?")) {
      throw new IllegalArgumentException(
          root.resolve(file) + ": \"" + text + "\" where a number belongs.");
    }
    return Double.parseDouble(text);
  }

  /** The named columns of a table, its headings left out. */
  private List<String[]> table(String name, String... columns) throws IOException {
    Path file = root.resolve(name);
    try (MappingIterator<String[]> cells =
        new CsvMapper()
            .readerFor(String[].class)
            .with(CsvParser.Feature.WRAP_AS_ARRAY)
            .readValues(Files.readString(file))) {
      List<String[]> rows = cells.readAll();
      List<String> headings = rows.isEmpty() ? List.of() : List.of(rows.get(0));
      return rows.stream().skip(1).map(row -> picked(file, headings, columns, row)).toList();
    }
  }

  private static String[] picked(Path file, List<String> headings, String[] columns, String[] row) {
    String[] picked = new String[columns.length];
    for (int c = 0; c < columns.length; c++) {
      int at = headings.indexOf(columns[c]);
      if (at < 0 || at >= row.length) {
        throw new IllegalArgumentException(file + ": a row without " + columns[c] + ".");
      }
      picked[c] = row[at];
    }
    return picked;
  }
}
