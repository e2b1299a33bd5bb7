package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.progress.Event;
import skidway.progress.EventWords;
import skidway.site.SpotKind;

/** Warns when a bundle was put where the plan does not have it: no limit was checked there. */
final class OffPlan {
  private OffPlan() {}

  static List<String> lines(Plan plan, List<Event> recorded) {
    List<String> lines = new ArrayList<>();
    for (Event event : recorded) {
      if (event instanceof Event.Placed placed) {
        line(plan, placed.bundleId(), placed.spotId(), placed.tier()).ifPresent(lines::add);
      } else if (event instanceof Event.Moved moved) {
        line(plan, moved.bundleId(), moved.spotId(), moved.tier()).ifPresent(lines::add);
      }
    }
    return lines;
  }

  /** Where the plan has a bundle, in words; a bundle that it places nowhere has no place. */
  static Optional<String> planned(Plan plan, String bundleId) {
    for (Stack stack : plan.stacks()) {
      int index = stack.bundleIds().indexOf(bundleId);
      if (index >= 0) {
        boolean rack = stack.spot().kind() == SpotKind.RACK;
        return Optional.of(EventWords.place(stack.spot().id(), rack ? 0 : index + 1));
      }
    }
    return Optional.empty();
  }

  private static Optional<String> line(Plan plan, String bundleId, String spotId, int tier) {
    boolean waits = plan.waitingPlaces().stream().anyMatch(s -> s.id().equals(spotId));
    String lies = EventWords.place(spotId, tier);
    Optional<String> planned = planned(plan, bundleId);
    if (waits || planned.filter(lies::equals).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        "Caution: plan "
            + plan.revision()
            + planned
                .map(p -> " has " + bundleId + " at " + p)
                .orElse(" has no spot for " + bundleId)
            + "; what floor, ground and stack bear was not checked for "
            + lies
            + ".");
  }
}
