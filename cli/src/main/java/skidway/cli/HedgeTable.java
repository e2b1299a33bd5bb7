package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import skidway.Hedge;
import skidway.LateCase;
import skidway.Scenario;
import skidway.plan.Task;
import skidway.units.Figures;

/**
 * Says what the plans that were looked at cost when loads are late, and what the choice is worth.
 */
final class HedgeTable {
  private static final int NARROW = 28;

  /** Less than this is no difference that anybody would notice, person-seconds. */
  private static final double NOTHING_S = 180;

  private final Task task;
  private final Figures figures;
  private final Hedge.Hedged hedged;
  private final List<Scenario> scenarios;

  HedgeTable(Task task, Hedge.Hedged hedged) {
    this.task = task;
    this.figures = task.figures();
    this.hedged = hedged;
    this.scenarios = hedged.scenarios();
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add(
        "What each plan costs when loads are late and the rest is then planned anew, crew hours");
    List<String> heads = new ArrayList<>(List.of("plan staged for"));
    for (int i = 0; i < scenarios.size(); i++) {
      heads.add(">case " + letter(i));
    }
    heads.addAll(List.of(">expected", ">worst", ">unchanged", ""));
    TextTable table = new TextTable(heads.toArray(String[]::new)).narrow(0, NARROW);
    hedged.candidates().forEach(candidate -> table.row(row(candidate)));
    lines.addAll(table.lines());
    for (int i = 0; i < scenarios.size(); i++) {
      lines.add("  case " + letter(i) + ": " + words(scenarios.get(i)));
    }
    lines.addAll(verdict());
    lines.add(
        "What is left is planned anew, with little effort, when a load does not come as planned;"
            + " 'unchanged' is");
    lines.add(
        "expected without that. All "
            + scenarios.stream().mapToInt(Scenario::cases).sum()
            + " cases count as equally likely (assumption).");
    lines.add("Reckoned at " + HoldWords.rate(task.schedule()) + "; that promises nothing.");
    return lines;
  }

  private String[] row(Hedge.Candidate candidate) {
    List<String> cells = new ArrayList<>(List.of(candidate.name()));
    for (int i = 0; i < scenarios.size(); i++) {
      LateCase late = candidate.cases().get(i);
      cells.add(hours(late.hoursS()) + (late.holds() ? "" : " *"));
    }
    cells.add(hours(candidate.expectedS(scenarios)));
    cells.add(hours(candidate.worstS()));
    cells.add(hours(candidate.unchangedS(scenarios)));
    cells.add(candidate.equals(hedged.chosen()) ? "<- taken" : "");
    return cells.toArray(String[]::new);
  }

  private static String letter(int i) {
    return i < 26 ? "" + (char) ('A' + i) : "" + (i + 1);
  }

  private String words(Scenario scenario) {
    List<String> names = scenario.names();
    String first = names.get(0);
    String all =
        names.size() == 1
            ? first
            : names.size() + " cases from " + first + " to " + names.get(names.size() - 1);
    String order =
        scenario.task().start().held().isEmpty() ? "pull list as planned" : "other pull list";
    String lost =
        scenario.lostS() < 1
            ? ""
            : ", " + figures.hours(scenario.lostS()) + " without a piece to lay";
    return all + ": " + order + lost;
  }

  private List<String> verdict() {
    List<String> lines = new ArrayList<>();
    boolean broken =
        hedged.candidates().stream().flatMap(c -> c.cases().stream()).anyMatch(c -> !c.holds());
    if (broken) {
      lines.add(
          "  *: breaks a rule in this case, or leaves bundles without a spot, planned anew or not.");
    }
    Hedge.Candidate plain = hedged.unhedged();
    Hedge.Candidate taken = hedged.chosen();
    if (taken.equals(plain)) {
      lines.add("None of these plans suffers less than the one without a hedge, which is kept.");
      return lines;
    }
    double priceS = taken.cases().get(0).hoursS() - plain.cases().get(0).hoursS();
    double gainS = plain.expectedS(scenarios) - taken.expectedS(scenarios);
    double worstS = plain.worstS() - taken.worstS();
    lines.add(
        "The hedge "
            + (priceS > NOTHING_S
                ? "costs " + hours(priceS) + " h in case A"
                : priceS < -NOTHING_S
                    ? "saves " + hours(-priceS) + " h in case A"
                    : "costs nothing in case A")
            + ", gains "
            + hours(gainS)
            + " h on average, and "
            + (worstS >= 0 ? "gains " + hours(worstS) : "costs " + hours(-worstS))
            + " h in the worst case.");
    return lines;
  }

  private static String hours(double personS) {
    return String.format(Locale.ROOT, "%.2f", personS / 3600);
  }
}
