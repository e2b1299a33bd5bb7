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
import skidway.sheet.ChangeSheet;
import skidway.sheet.Tag;
import skidway.sheet.TagChange;
import skidway.sheet.TagChanges;
import skidway.sheet.TagPlace;

/** Says in sentences what one revision changes against an earlier one. */
final class PlanChanges {
  private static final String NOTHING_LIFTED = "No bundle that lies already is lifted.";

  private final History history;
  private final Plan from;
  private final Plan to;

  PlanChanges(History history, Plan from, Plan to) {
    this.history = history;
    this.from = from;
    this.to = to;
  }

  List<String> lines() {
    Task left = history.taskOf(to);
    List<TagChange> changes = tags(left);
    List<String> lines = new ArrayList<>();
    lines.add(elsewhere(left));
    changes.forEach(change -> lines.add("  " + sentence(change, left)));
    lines.addAll(moveLines(left));
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

  /** What changes, in a few sentences. */
  List<String> inShort() {
    Task left = history.taskOf(to);
    int lifts = moves(left).size();
    return List.of(
        elsewhere(left),
        lifts == 0 ? NOTHING_LIFTED : "What lies already is lifted " + times(lifts) + ".",
        hours(left));
  }

  private static String times(int count) {
    return count == 1 ? "once" : count + " times";
  }

  private String elsewhere(Task left) {
    return String.format(
        Locale.ROOT,
        "Revision %d against revision %d: %d of %d bundles lie or go elsewhere.",
        to.revision(),
        from.revision(),
        tags(left).stream().filter(PlanChanges::liesElsewhere).count(),
        left.delivery().bundles().size());
  }

  /** The bundles still to be used whose tags change, for whatever reason. */
  private List<TagChange> tags(Task left) {
    return TagChanges.between(history.job().task(), from, to).all().stream()
        .filter(change -> isLeft(left, change.bundleId()))
        .toList();
  }

  History history() {
    return history;
  }

  Plan to() {
    return to;
  }

  /** The tags that change of bundles that are still to be used. */
  TagChanges tagChanges() {
    TagChanges all = TagChanges.between(history.job().task(), from, to);
    return new TagChanges(all.since(), tags(history.taskOf(to)), all.sameInputs());
  }

  /** How many bundles get other tags. */
  int tagsToReprint() {
    return tags(history.taskOf(to)).size();
  }

  /** How often the machine lifts what lies already. */
  int lifts() {
    return moves(history.taskOf(to)).size();
  }

  /** On another spot or another tier; a stack that got higher or a tag of other pieces is none. */
  private static boolean liesElsewhere(TagChange change) {
    return !place(change.was()).equals(place(change.now().map(Tag::place)));
  }

  private static String place(Optional<TagPlace> place) {
    if (place.isPresent() && place.get() instanceof TagPlace.Stacked stacked) {
      return stacked.code() + ", tier " + stacked.tier();
    }
    return place.map(TagPlace::words).orElse("");
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
    String how =
        !liesElsewhere(change)
            ? "only its tag changes"
            : !lies ? "still to come" : moves ? "is moved" : "lies there, tag changes";
    return change.bundleId() + ": " + was + " -> " + now + " (" + how + ")";
  }

  /** What the machine does with bundles that lie already, in order. */
  private List<Step> moves(Task left) {
    return to.steps().stream().filter(s -> left.start().lies(s.bundleId())).toList();
  }

  private List<String> moveLines(Task left) {
    List<Step> moves = moves(left);
    if (moves.isEmpty()) {
      return left.site().byHand()
          ? Wrap.sentence(ChangeSheet.STAYS_BY_HAND, 0, 2)
          : List.of(NOTHING_LIFTED);
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
