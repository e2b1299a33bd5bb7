package skidway.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.site.Point;
import skidway.site.Spot;

/** Looks up where each bundle of a plan lies, and where its ends point to. */
final class TagPlaces {
  private static final TagPlace NOWHERE = new TagPlace.NoSpot();

  private final Map<String, TagPlace> byBundle = new HashMap<>();

  private TagPlaces() {}

  static TagPlaces of(Task task, Plan plan) {
    TagPlaces places = new TagPlaces();
    for (StackView stack : StackView.of(task, plan)) {
      Spot spot = stack.spot();
      List<String> ends = ends(spot, task.site().northDeg());
      List<Integer> told = told(stack, plan);
      int tiers = told.stream().max(Integer::compare).orElse(0);
      for (int i = 0; i < told.size(); i++) {
        TagPlace place =
            stack.rack()
                ? new TagPlace.OnEnd(spot.id())
                : new TagPlace.Stacked(spot.id(), told.get(i), tiers, ends);
        places.byBundle.putIfAbsent(stack.tiers().get(i).bundleId(), place);
      }
    }
    return places;
  }

  /** The tier that each bundle gets to when it comes, as the steps tell it; what stays, stays. */
  private static List<Integer> told(StackView stack, Plan plan) {
    List<Integer> told = new ArrayList<>();
    for (Tier tier : stack.tiers()) {
      int place = told.size() + 1;
      told.add(
          plan.steps().stream()
              .filter(step -> !step.kind().waits() && step.bundleId().equals(tier.bundleId()))
              .map(Step::tier)
              .filter(t -> t > 0)
              .findFirst()
              .orElse(place));
    }
    return told;
  }

  TagPlace of(String bundleId) {
    return byBundle.getOrDefault(bundleId, NOWHERE);
  }

  /** Somebody in the open strip who faces the stack has the first on the left hand. */
  private static List<String> ends(Spot spot, double northDeg) {
    Point facing = spot.towardsOpenSide().times(-1);
    Point left = facing.turnedLeft();
    return List.of(Compass.name(left, northDeg), Compass.name(left.times(-1), northDeg));
  }
}
