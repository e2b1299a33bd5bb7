package skidway.sheet;

import java.util.List;
import java.util.stream.Stream;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.site.Point;
import skidway.site.Spot;

/** How every spot of a plan is marked on the ground with two tapes. */
record SetOut(List<Reference> references, List<SpotMarks> spots) {
  SetOut {
    references = List.copyOf(references);
    spots = List.copyOf(spots);
  }

  static SetOut of(Task task, Plan plan) {
    List<Spot> stacks = plan.stacks().stream().map(Stack::spot).toList();
    List<Spot> waiting = plan.waitingPlaces();
    List<Point> wanted =
        Stream.concat(stacks.stream(), waiting.stream())
            .flatMap(spot -> SpotMarks.corners(spot).stream())
            .toList();
    TapeSight sight = TapeSight.of(task);
    List<Reference> corners = ReferenceCorners.of(task.site(), sight);
    List<Reference> from = Stakes.added(task, corners, wanted, sight);
    return new SetOut(
        from,
        Stream.concat(
                stacks.stream().map(s -> SpotMarks.of(s, false, from, sight)),
                waiting.stream().map(s -> SpotMarks.of(s, true, from, sight)))
            .toList());
  }
}
