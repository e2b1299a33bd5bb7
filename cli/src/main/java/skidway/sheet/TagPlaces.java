package skidway.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import skidway.plan.Plan;
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
      int tiers = stack.tiers().size();
      for (int i = 0; i < tiers; i++) {
        TagPlace place =
            stack.rack()
                ? new TagPlace.OnEnd(spot.id())
                : new TagPlace.Stacked(spot.id(), i + 1, tiers, ends);
        places.byBundle.putIfAbsent(stack.tiers().get(i).bundleId(), place);
      }
    }
    return places;
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
