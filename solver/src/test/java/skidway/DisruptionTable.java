package skidway;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import skidway.plan.Baseline;

/** What planning anew costs beside changing nothing and planning afresh, as rows of a table. */
final class DisruptionTable {
  private static final List<String> HEAD =
      List.of(
          "| job | beside | can be carried out | places fewer | hours, median | planned anew,"
              + " median | planned anew over it: median | worst | best |",
          "|---|---|---|---|---|---|---|---|---|");

  private DisruptionTable() {}

  static List<String> of(List<Replanned> all) {
    List<String> lines = new ArrayList<>(HEAD);
    all.stream()
        .map(Replanned::job)
        .distinct()
        .forEach(
            job -> {
              List<Replanned> own = all.stream().filter(r -> r.job().equals(job)).toList();
              lines.add(row(job, own, "as before", "do nothing"));
              lines.add(row(job, own, "afresh", "from scratch"));
            });
    return lines;
  }

  /** Hours are compared where both place as many bundles. */
  private static String row(String job, List<Replanned> all, String name, String called) {
    int feasible = 0;
    int fewer = 0;
    List<Double> others = new ArrayList<>();
    List<Double> owns = new ArrayList<>();
    List<Double> ratios = new ArrayList<>();
    for (Replanned replanned : all) {
      Optional<Baseline> other = replanned.baseline(name).filter(b -> b.placed() > 0);
      if (other.isEmpty()) {
        continue;
      }
      feasible++;
      if (other.get().placed() < replanned.placed()) {
        fewer++;
        continue;
      }
      others.add(other.get().effort().totalS() / 3600);
      owns.add(replanned.totalS() / 3600);
      ratios.add(100 * (replanned.totalS() / other.get().effort().totalS() - 1));
    }
    String counts = feasible + " of " + all.size() + " | " + fewer;
    return "| " + job + " | " + called + " | " + counts + figures(others, owns, ratios);
  }

  private static String figures(List<Double> others, List<Double> owns, List<Double> ratios) {
    if (ratios.isEmpty()) {
      return " | - | - | - | - | - |";
    }
    return String.format(
        Locale.ROOT,
        " | %.2f | %.2f | %+.1f %% | %+.1f %% | %+.1f %% |",
        median(others),
        median(owns),
        median(ratios),
        ratios.stream().mapToDouble(r -> r).max().orElseThrow(),
        ratios.stream().mapToDouble(r -> r).min().orElseThrow());
  }

  private static double median(List<Double> numbers) {
    List<Double> sorted = numbers.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
