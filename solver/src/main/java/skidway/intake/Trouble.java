package skidway.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import skidway.job.BadInput;
import skidway.job.Problem;

/** Collects what is wrong with a list, each problem at its cell. */
final class Trouble {
  private static final int MOST_QUOTED = 60;

  private final String fileName;
  private final List<Problem> problems = new ArrayList<>();

  Trouble(String fileName) {
    this.fileName = fileName;
  }

  void add(Cell cell, String found, String allowed, String wayOut) {
    problems.add(new Problem(fileName, cell.line(), cell.column(), found, allowed, wayOut, ""));
  }

  /** Something about the list as a whole. */
  void add(String found, String allowed, String wayOut) {
    problems.add(new Problem(fileName, 0, 0, found, allowed, wayOut, ""));
  }

  void add(Problem problem) {
    problems.add(problem);
  }

  boolean any() {
    return !problems.isEmpty();
  }

  /**
   * Ends the reading if anything is wrong.
   *
   * @throws BadInput with everything that is, in the order of the list
   */
  void throwIfAny() {
    if (any()) {
      throw new BadInput(
          problems.stream()
              .sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
              .toList());
    }
  }

  /** A single problem of the whole file. */
  static BadInput of(String fileName, String found, String allowed, String wayOut) {
    return new BadInput(List.of(new Problem(fileName, 0, 0, found, allowed, wayOut, "")));
  }

  /** A text in quotes, shortened and without line ends. */
  static String quote(String text) {
    String clean = text.strip().replaceAll("\\p{Cntrl}", " ");
    String shown = clean.length() <= MOST_QUOTED ? clean : clean.substring(0, MOST_QUOTED) + "...";
    return clean.isEmpty() ? "nothing" : '"' + shown + '"';
  }
}
