package skidway.job;

import java.util.List;
import java.util.stream.Collectors;

/** Says everything that is wrong in a job folder or a plan file, in file order. */
public final class BadInput extends RuntimeException {
  private final transient List<Problem> problems;
  private final int more;

  /** A report of these problems. */
  public BadInput(List<Problem> problems) {
    this(
        problems.subList(0, Math.min(Problems.SHOWN, problems.size())),
        Math.max(0, problems.size() - Problems.SHOWN));
  }

  BadInput(List<Problem> problems, int more) {
    super(message(problems, more));
    this.problems = List.copyOf(problems);
    this.more = more;
  }

  /** The first problems in file order, at most {@link Problems#SHOWN}. */
  public List<Problem> problems() {
    return problems;
  }

  /** How many more there are. */
  public int more() {
    return more;
  }

  private static String message(List<Problem> problems, int more) {
    String all = problems.stream().map(Problem::text).collect(Collectors.joining("\n"));
    return more == 0 ? all : all + "\nand " + more + " more";
  }
}
