package skidway.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import skidway.erection.ErectionRate;
import skidway.erection.HoldPoint;
import skidway.erection.Placement;
import skidway.erection.Schedule;
import skidway.erection.Timetable;
import skidway.erection.WallReach;
import skidway.plan.Task;
import skidway.progress.EventWords;
import skidway.progress.Outlook;
import skidway.progress.Progress;
import skidway.progress.Remaining;
import skidway.timber.Bundle;
import skidway.timber.Load;

/** Says how far the crew can build, what stops it, and what another order gains. */
final class HoldWords {
  private final Task job;
  private final Progress progress;
  private final HoldPoint hold;
  private final Schedule schedule;

  /**
   * @param schedule as it goes on from now
   */
  HoldWords(Task job, Progress progress, Schedule schedule) {
    this.job = job;
    this.progress = progress;
    this.hold = Remaining.hold(job, progress);
    this.schedule = schedule;
  }

  /** For the screen: a head and the sentences below it. */
  List<String> lines() {
    List<String> lines = new ArrayList<>(List.of("How far the crew can build:"));
    sentences().forEach(sentence -> lines.add("  " + sentence));
    return lines;
  }

  List<String> sentences() {
    List<String> lines = new ArrayList<>();
    Optional<Placement> first = hold.firstMissing();
    if (first.isEmpty()) {
      lines.add("To the top: nothing is missing, damaged or late.");
      return lines;
    }
    Placement stop = first.get();
    lines.add(
        String.format(
            Locale.ROOT,
            "As planned: %d pieces, %s, then %s is wanted%s.",
            hold.asPlanned().size(),
            days(hold.asPlanned()),
            stop.piece().mark(),
            why(stop)));
    int more = hold.resequenced().size() - hold.asPlanned().size();
    lines.add(
        more == 0
            ? "No other order gets further: everything else lies on it."
            : String.format(
                Locale.ROOT,
                "In the order of the new pull list: %d pieces, %s; gains %s of work.",
                hold.resequenced().size(),
                days(hold.resequenced()),
                hours(gained())));
    lines.add("Walls then: " + reached());
    lines.add("Whether half-built walls must be braced first is the site lead's to judge.");
    idle().ifPresent(lines::add);
    lines.add("Reckoned at " + rate() + "; that promises nothing.");
    return lines;
  }

  private Duration gained() {
    return worked(hold.resequenced()).minus(worked(hold.asPlanned()));
  }

  private Duration worked(List<Placement> pieces) {
    double days = timetable(pieces).crewDays(0, pieces.size());
    return Duration.ofSeconds(Math.round(days * schedule.calendar().dayLength().toSeconds()));
  }

  private Timetable timetable(List<Placement> pieces) {
    return Timetable.of(schedule, job.pullOrder(), pieces);
  }

  private String days(List<Placement> pieces) {
    double days = timetable(pieces).crewDays(0, pieces.size());
    return String.format(Locale.ROOT, "%.1f crew days", days);
  }

  private static String hours(Duration time) {
    return String.format(Locale.ROOT, "%.1f hours", time.toMinutes() / 60.0);
  }

  private String why(Placement stop) {
    String mark = stop.piece().mark();
    Optional<Bundle> bundle =
        job.delivery().bundles().stream()
            .filter(b -> b.pieces().stream().anyMatch(p -> p.mark().equals(mark)))
            .findFirst();
    if (progress.withheld().contains(mark)) {
      return " (missing or damaged)";
    }
    return bundle
        .flatMap(b -> job.delivery().load(b.loadId()))
        .map(load -> " (load " + load.id() + ", expected " + expected(load) + ")")
        .orElse("");
  }

  private String expected(Load load) {
    return EventWords.time(progress.expected(load.id()));
  }

  private String reached() {
    return hold.wallsResequenced().stream().map(HoldWords::reach).collect(Collectors.joining(", "));
  }

  private static String reach(WallReach reach) {
    return reach.wall().id()
        + (reach.isWhole()
            ? " done"
            : reach.course() > 0
                ? " to course " + reach.course() + parts(reach)
                : reach.begunCourse() > 0 ? " no whole course" + parts(reach) : " not begun");
  }

  private static String parts(WallReach reach) {
    return reach.begunCourse() > reach.course()
        ? " (parts to course " + reach.begunCourse() + ")"
        : "";
  }

  /** How long the crew has nothing to lay before the first late load is there. */
  private Optional<String> idle() {
    return Optional.of(Outlook.of(job, progress, schedule).idle())
        .filter(idle -> !idle.isZero())
        .map(idle -> "Then " + hours(idle) + " without a piece to lay before the next load.");
  }

  private String rate() {
    return rate(schedule);
  }

  /** How fast the crew is taken to be. */
  static String rate(Schedule schedule) {
    return plain(schedule.rate().perDay())
        + (schedule.rate().unit() == ErectionRate.Unit.PIECES ? " pieces" : " courses")
        + " a day";
  }

  private static String plain(double value) {
    String format = value == Math.rint(value) ? "%.0f" : "%.1f";
    return String.format(Locale.ROOT, format, value);
  }
}
