package skidway.progress;

import java.util.List;
import java.util.Map;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.Bundle;

/** Whether a bundle can have been put down or moved where somebody says. */
final class StackCheck {
  private final Tally tally;
  private final Map<String, Bundle> bundles;

  StackCheck(Tally tally) {
    this.tally = tally;
    this.bundles = tally.roll.bundles;
  }

  List<Contradiction> placed(Event.Placed event) {
    Objections no = new Objections(event);
    String id = event.bundleId();
    if (!no.unknown("bundle", id, bundles.keySet(), "name a bundle of bundles.csv")) {
      canBePutDown(no, id);
    }
    if (no.none()) {
      no.before(
          Roll.known(tally.arrived, loadOf(id)), "Load " + loadOf(id) + " of " + id + " came");
    }
    fits(no, event.spotId(), event.tier());
    notBeforeLastChange(no, event.spotId());
    return no.all();
  }

  private void canBePutDown(Objections no, String id) {
    if (tally.lies(id)) {
      no.add(
          "Bundle " + id + " lies already, at " + place(id),
          "record 'moved " + id + " to ...' if it lies elsewhere now");
    } else if (tally.missing.containsKey(id)) {
      no.add("Bundle " + id + " is missing", "record 'found " + id + "' first");
    } else if (tally.usedUp(id)) {
      no.add(
          "All pieces of bundle " + id + " are pulled or missing",
          "look at the bundle's tag; undo what was pulled by mistake");
    } else if (!tally.arrived.containsKey(loadOf(id))) {
      no.add(
          "Load " + loadOf(id) + ", which brings bundle " + id + ", has not arrived",
          "record 'arrived " + loadOf(id) + "' first");
    }
  }

  List<Contradiction> moved(Event.Moved event) {
    Objections no = new Objections(event);
    String id = event.bundleId();
    if (!no.unknown("bundle", id, bundles.keySet(), "name a bundle of bundles.csv")) {
      canBeMoved(no, id, event.spotId());
    }
    if (no.none()) {
      no.before(Roll.known(tally.downSince, id), "Bundle " + id + " was put down");
    }
    notBeforeLastChange(no, tally.spotOf(id));
    if (!tally.spotOf(id).equals(event.spotId())) {
      fits(no, event.spotId(), event.tier());
      notBeforeLastChange(no, event.spotId());
    }
    return no.all();
  }

  private void canBeMoved(Objections no, String id, String toSpotId) {
    if (!tally.lies(id)) {
      no.add(
          "Bundle " + id + " lies nowhere yet, so it cannot be moved",
          "record 'placed " + id + " at ...'");
      return;
    }
    if (tally.spotOf(id).equals(toSpotId)) {
      no.add(
          "Bundle " + id + " lies on " + toSpotId + " already, at " + place(id),
          "name the spot that it was moved to");
      return;
    }
    List<String> stack = tally.on(tally.spotOf(id));
    List<String> above = stack.subList(stack.indexOf(id) + 1, stack.size());
    if (kindOf(tally.spotOf(id)) == SpotKind.STACK && !above.isEmpty()) {
      no.add(
          "On bundle " + id + " at " + place(id) + " lies " + String.join(", ", above),
          "record first where what lies on it was moved to, from the top");
    }
  }

  /** Tiers are counted from what lies there now, so a stack is recorded in the order of lifts. */
  private void notBeforeLastChange(Objections no, String spotId) {
    if (no.none() && tally.changed.containsKey(spotId)) {
      no.before(Roll.known(tally.changed, spotId), "The stack on " + spotId + " changed");
    }
  }

  /** Whether a bundle fits on what lies on a spot. */
  private void fits(Objections no, String spotId, int tier) {
    Map<String, Spot> spots = tally.roll.spots;
    if (no.unknown("spot", spotId, spots.keySet(), "name a spot of the newest plan's map")) {
      return;
    }
    int next = tally.on(spotId).size() + 1;
    if (kindOf(spotId) == SpotKind.RACK) {
      if (tier != 0) {
        no.add("Spot " + spotId + " is a rack, which has no tiers", "leave the tier out");
      }
    } else if (tier < 1) {
      no.add("A stack has no tier " + tier + "; 1 is the bottom", "say tier " + next);
    } else if (tier < next) {
      no.add(
          "Tier " + tier + " on " + spotId + " is taken by " + tally.on(spotId).get(tier - 1),
          "say tier " + next + ", or record first what became of the other");
    } else if (tier > next) {
      no.add(
          "Tier " + tier + " on " + spotId + " has nothing to lie on: " + lieOn(spotId),
          "say tier " + next + ", or record first what lies below");
    }
  }

  private String lieOn(String spotId) {
    List<String> stack = tally.on(spotId);
    return stack.isEmpty() ? "nothing is there" : "only " + String.join(", ", stack) + " is there";
  }

  /** Where a bundle lies, in words. */
  private String place(String bundleId) {
    String spotId = tally.spotOf(bundleId);
    boolean rack = kindOf(spotId) == SpotKind.RACK;
    return EventWords.place(spotId, rack ? 0 : tally.on(spotId).indexOf(bundleId) + 1);
  }

  private SpotKind kindOf(String spotId) {
    return Roll.known(tally.roll.spots, spotId).kind();
  }

  private String loadOf(String bundleId) {
    return tally.roll.bundle(bundleId).loadId();
  }
}
