package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import skidway.job.History;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.sheet.TagChange;
import skidway.sheet.TagChanges;
import skidway.sheet.TagPlace;

/** Says in sentences what one revision changes against an earlier one. */
final class PlanChanges {
  private final History history;
  private final Plan from;
  private final Plan to;

  PlanChanges(History history, Plan from, Plan to) {
    this.history = history;
    this.from = from;
    this.to = to;
  }

  List<String> lines() {
    Task job = history.job().task();
    Task left = history.taskOf(to);
    List<TagChange> changes =
        TagChanges.between(job, from, to).all().stream()
            .filter(change -> isLeft(left, change.bundleId()))
            .toList();
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "Revision %d against revision %d: %d of %d bundles lie or go elsewhere.",
            to.revision(),
            from.revision(),
            changes.size(),
            left.delivery().bundles().size()));
    changes.forEach(change -> lines.add("  " + sentence(change, left)));
    lines.addAll(moves(left));
    lines.add(hours(left));
    if (!changes.isEmpty()) {
      lines.add(
          "Tags: print --changed-since "
              + from.revision()
              + " gives the new ones and those to"
              + " take off.");
    }
    return lines;
  }

  private static boolean isLeft(Task left, String bundleId) {
    return left.delivery().bundle(bundleId).isPresent();
  }

  private String sentence(TagChange change, Task left) {
    String was = change.was().map(TagPlace::words).orElse("nowhere");
    String now = change.now().map(tag -> tag.place().words()).orElse("no longer delivered");
    boolean lies = left.start().lies(change.bundleId());
    boolean moves =
        to.steps().stream()
            .anyMatch(s -> s.bundleId().equals(change.bundleId()) && !s.kind().offTruck());
    String how = !lies ? "still to come" : moves ? "is moved" : "lies there, tag changes";
    return change.bundleId() + ": " + was + " -> " + now + " (" + how + ")";
  }

  /** What the machine does with bundles that lie already. */
  private List<String> moves(Task left) {
    List<Step> moves = to.steps().stream().filter(s -> left.start().lies(s.bundleId())).toList();
    if (moves.isEmpty()) {
      return List.of("No bundle that lies already is lifted.");
    }
    List<String> lines = new ArrayList<>();
    lines.add("Moves before the next truck, in this order:");
    for (Step step : moves) {
      lines.add(String.format(Locale.ROOT, "  %2d  %s", step.number(), words(step)));
    }
    return lines;
  }

  private static String words(Step step) {
    String tier = step.tier() == 0 ? "on end" : "tier " + step.tier();
    String lift = step.bundleId() + " from " + step.fromId();
    return step.kind() == StepKind.SET_ASIDE
        ? lift + ", set aside at " + step.toId()
        : lift + " to " + step.toId() + ", " + tier;
  }

  private String hours(Task left) {
    String now = left.figures().hours(to.effort().totalS());
    String moved = left.figures().hours(to.effort().moveS());
    Optional<String> before =
        to.baselines().stream()
            .filter(b -> b.name().equals("as before") && b.placed() > 0)
            .findFirst()
            .map(b -> left.figures().hours(b.effort().totalS()));
    return "What is left takes "
        + now
        + (to.effort().moveS() > 0 ? ", " + moved + " of it for moves" : "")
        + before.map(h -> "; with nothing changed " + h).orElse("")
        + ".";
  }
}
