package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import skidway.Planner;
import skidway.erection.Schedule;
import skidway.job.History;
import skidway.plan.Plan;
import skidway.progress.Outlook;
import skidway.units.Figures;

/** Futures side by side: what each costs, how far the crew gets, what is lifted and tagged anew. */
final class FuturesTable {
  private static final int NARROW = 34;

  private final TextTable table =
      new TextTable(
              "What if",
              ">no spot",
              ">crew hours",
              ">hours lost",
              "stops at",
              ">work until then",
              ">lifts",
              ">tags")
          .narrow(0, NARROW);
  private Optional<Schedule> schedule = Optional.empty();

  void add(Future future, Planner.Planned planned) {
    History history = future.history();
    Plan before = history.newest().orElseThrow();
    Plan plan = planned.plan();
    Schedule now = history.taskOf(plan).schedule();
    Outlook outlook = Outlook.of(history.job().task(), history.progress(), now);
    Figures figures = history.job().task().figures();
    PlanChanges changes = new PlanChanges(history, before, plan);
    table.row(
        future.name(),
        "" + plan.unplaced().size(),
        figures.hours(plan.effort().totalS()),
        figures.hours((double) outlook.idle().toSeconds()),
        outlook.stop().map(stop -> stop.piece().mark()).orElse("nothing"),
        outlook.stop().isPresent() ? days(outlook) : "all",
        "" + changes.lifts(),
        "" + changes.tagsToReprint());
    schedule = Optional.of(now);
  }

  private static String days(Outlook outlook) {
    return String.format(Locale.ROOT, "%.1f crew days", outlook.crewDays());
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>(table.lines());
    lines.add("");
    lines.add("Crew hours: what is left to handle, each future planned anew with the same effort.");
    lines.add(
        "Hours lost: working hours without a piece to lay, until the next load; where nobody knows"
            + " when something comes, none are counted.");
    lines.add("Lifts: of what lies already. Tags: bundles whose tags change.");
    schedule.ifPresent(
        s -> lines.add("Reckoned at " + HoldWords.rate(s) + "; that promises nothing."));
    return lines;
  }
}
