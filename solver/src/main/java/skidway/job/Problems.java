package skidway.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Collects what is wrong and what is odd while files are read; keeps the first of very many. */
public final class Problems {
  /** Most problems in one report. */
  static final int SHOWN = 200;

  /** Most kept until they are put in file order. */
  private static final int KEPT = 1000;

  private final List<Problem> kept = new ArrayList<>();
  private final List<Problem> remarks = new ArrayList<>();
  private int count;

  public void add(Place place, String found, String allowed, String wayOut) {
    count++;
    if (!full()) {
      kept.add(place.problem(found, allowed, wayOut));
    }
  }

  /** Something odd that does not stop the job. */
  public void remark(Place place, String found, String allowed, String wayOut) {
    if (remarks.size() < SHOWN) {
      remarks.add(place.problem(found, allowed, wayOut));
    }
  }

  public int count() {
    return count;
  }

  /** The first one in the order of reading that a question is asked for. */
  public Optional<Problem> first(Predicate<Problem> which) {
    return kept.stream().filter(which).findFirst();
  }

  /** Whether reading on would only count. */
  public boolean isFull() {
    return full();
  }

  /** Whether further problems are only counted. */
  boolean full() {
    return kept.size() >= KEPT;
  }

  public List<Problem> remarks(List<String> fileOrder) {
    return remarks.stream().sorted(by(fileOrder)).toList();
  }

  /** The first of what is wrong. */
  List<Problem> shown(List<String> fileOrder) {
    return kept.stream().sorted(by(fileOrder)).limit(SHOWN).toList();
  }

  /**
   * Ends the reading if anything is wrong.
   *
   * @throws BadInput with all problems in file order
   */
  public void throwIfAny(List<String> fileOrder) {
    if (count > 0) {
      List<Problem> shown = shown(fileOrder);
      throw new BadInput(shown, count - shown.size());
    }
  }

  private static Comparator<Problem> by(List<String> fileOrder) {
    return Comparator.comparingInt((Problem p) -> fileOrder.indexOf(p.file()))
        .thenComparingInt(Problem::line)
        .thenComparingInt(Problem::column);
  }
}
