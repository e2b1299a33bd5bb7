package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import skidway.audit.AuditReport;
import skidway.plan.Margin;
import skidway.plan.Task;
import skidway.sheet.OpenMatters;

/** Writes an audit's report for the screen, the findings left out. */
final class AuditText {
  private AuditText() {}

  /**
   * @param all every limit of every stack and class of pieces, not only the tightest
   */
  static List<String> lines(Task task, AuditReport report, boolean all) {
    List<String> lines = new ArrayList<>();
    lines.addAll(MarginTable.of(report.margins(), task.figures()).lines());
    List<Margin> stacks = report.stackMargins();
    List<Margin> shown = all ? stacks : StackMargins.tightest(stacks);
    lines.addAll(
        table(
            all ? "Stacks, every limit" : "Stacks, tightest loads and heights",
            "stack",
            shown,
            task));
    if (all) {
      lines.addAll(table("Pieces, by class", "pieces", report.pieceMargins(), task));
    }
    lines.addAll(ChangedLimits.lines(task));
    lines.addAll(openMatters(report));
    return lines;
  }

  private static List<String> table(String title, String place, List<Margin> margins, Task task) {
    List<String> lines = new ArrayList<>();
    if (!margins.isEmpty()) {
      lines.addAll(List.of("", title));
      lines.addAll(MarginTable.byPlace(place, margins, task.figures()).lines());
    }
    return lines;
  }

  /** What people must settle and what was not checked; a list of each that is not empty. */
  static List<String> openMatters(AuditReport report) {
    OpenMatters matters = OpenMatters.of(report);
    List<String> lines = new ArrayList<>();
    lines.addAll(list("For people to settle", matters.toSettle()));
    lines.addAll(list("Not checked", matters.notChecked()));
    return lines;
  }

  private static List<String> list(String title, List<String> sentences) {
    List<String> lines = new ArrayList<>();
    if (!sentences.isEmpty()) {
      lines.addAll(List.of("", title));
      sentences.forEach(sentence -> lines.addAll(Wrap.sentence(sentence, 2, 4)));
    }
    return lines;
  }
}
