package skidway.cli;

import java.util.List;
import java.util.stream.Collectors;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.Wave;
import skidway.sheet.PullLine;
import skidway.sheet.PullList;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/**
 * Writes the pull list as comma-separated values (RFC 4180): a header, then one row a piece in the
 * order of pulling. Masses are in the job's unit, which the header names.
 */
final class PullCsv {
  private static final String LINE_END = "\r\n";

  private PullCsv() {}

  static String text(Task task, Plan plan, List<Wave> waves, String fingerprint) {
    StringBuilder out = new StringBuilder(head(task.figures())).append(LINE_END);
    for (PullLine line : PullList.of(task, plan, waves)) {
      out.append(row(line, task.figures(), plan.revision(), fingerprint)).append(LINE_END);
    }
    return out.toString();
  }

  private static String head(Figures figures) {
    String unit = figures.units() == UnitSystem.METRIC ? "kg" : "lb";
    return Csv.row(
        "turn",
        "wall",
        "course",
        "position",
        "mark",
        "spot",
        "tier",
        "layer",
        "bundle",
        "mass_at_most_" + unit,
        "people",
        "rehandle_pieces",
        "rehandle_first",
        "revision",
        "plan");
  }

  private static String row(PullLine line, Figures figures, int revision, String fingerprint) {
    return Csv.row(
        Integer.toString(line.turn()),
        line.piece().wallId(),
        Integer.toString(line.piece().course()),
        Integer.toString(line.piece().position()),
        line.piece().mark(),
        line.place(),
        line.level(),
        Integer.toString(line.layerThere()),
        line.bundle().id(),
        Figures.number(figures.mass(line.piece().mass().highKg())),
        line.device() ? "device" : Integer.toString(line.people()),
        Integer.toString(line.over().size()),
        line.over().stream().map(PullLine.Over::mark).collect(Collectors.joining("; ")),
        Integer.toString(revision),
        fingerprint);
  }
}
