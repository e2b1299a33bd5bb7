package skidway.progress;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Piece;
import skidway.units.Nearest;

/** Turns what was counted on a load into events, or says what cannot be in it. */
public final class Receipt {
  private final Count count;
  private final Progress progress;

  /** The load of each bundle, and the bundle of each piece; of one name, the bundle counts. */
  private final Map<String, String> loadOf = new HashMap<>();

  private final Map<String, String> bundleOf = new HashMap<>();
  private final Set<String> ours = new LinkedHashSet<>();
  private final List<Contradiction> objections = new ArrayList<>();

  /**
   * @param progress before the count
   */
  public Receipt(Count count, Delivery delivery, Progress progress) {
    this.count = count;
    this.progress = progress;
    for (Bundle bundle : delivery.bundles()) {
      loadOf.put(bundle.id(), bundle.loadId());
      boolean own = bundle.loadId().equals(count.loadId());
      if (own) {
        ours.add(bundle.id());
      }
      for (Piece piece : bundle.pieces()) {
        bundleOf.put(piece.mark(), bundle.id());
        if (own) {
          ours.add(piece.mark());
        }
      }
    }
  }

  /** Everything that speaks against the count, by itself and by what was recorded before. */
  public List<Contradiction> objections() {
    objections.clear();
    LocalDateTime arrived = progress.arrived().get(count.loadId());
    if (arrived != null && count.complete()) {
      object(
          "Load " + count.loadId() + " arrived already, at " + EventWords.time(arrived),
          "say what else was found with --missing, --damaged or --extra, or undo its arrival");
    }
    Set<String> named = new LinkedHashSet<>(count.there());
    named.addAll(count.missing().keySet());
    named.addAll(count.damaged().keySet());
    named.stream().filter(this::known).forEach(this::agrees);
    count.extras().keySet().forEach(this::extra);
    return List.copyOf(objections);
  }

  private boolean known(String id) {
    if (ours.contains(id)) {
      return true;
    }
    String bundleId = loadOf.containsKey(id) ? id : bundleOf.getOrDefault(id, "");
    if (bundleId.isEmpty()) {
      object(
          "Load "
              + count.loadId()
              + " has no bundle or piece \""
              + id
              + '"'
              + Nearest.hint(id, ours),
          "name a bundle or piece of the load; what is in no list is told with --extra");
    } else {
      object(
          id + " is of load " + loadOf.get(bundleId) + ", not of load " + count.loadId(),
          "count it with its own load; if it came on this one, correct its load in bundles.csv");
    }
    return false;
  }

  /** One thing is said once, and not otherwise than it was recorded. */
  private void agrees(String id) {
    boolean missing = count.missing().containsKey(id);
    boolean damaged = count.damaged().containsKey(id);
    if (missing && damaged) {
      object(id + " is said to be missing and damaged", "say one of them");
    } else if (count.there().contains(id) && (missing || damaged)) {
      object(id + " is said to be there and " + word(missing), "say one of them");
    }
    String recorded = recorded(id);
    if (!recorded.isEmpty()) {
      object(
          id + " is recorded " + recorded + " already",
          missing || damaged
              ? "leave it out, or record 'found " + id + "' first if that has changed"
              : "record 'found " + id + "' if it is fit to build in");
      return;
    }
    String bundleId = loadOf.containsKey(id) ? "" : bundleOf.getOrDefault(id, "");
    boolean whole = count.missing().containsKey(bundleId) || count.damaged().containsKey(bundleId);
    if (whole && (missing || damaged || count.missing().containsKey(bundleId))) {
      object(
          "Piece "
              + id
              + " lies in bundle "
              + bundleId
              + ", which is said to be "
              + word(count.missing().containsKey(bundleId))
              + " as a whole",
          "name the bundle, or its pieces one by one");
    }
  }

  private static String word(boolean missing) {
    return missing ? "missing" : "damaged";
  }

  private String recorded(String id) {
    return progress.missing().contains(id)
        ? "missing"
        : progress.damaged().contains(id) ? "damaged" : "";
  }

  private void extra(String id) {
    if (ours.contains(id)) {
      object(
          id + " is on the list of load " + count.loadId() + ", so it is nothing extra",
          "leave it out");
    } else if (loadOf.containsKey(id) || bundleOf.containsKey(id)) {
      String bundleId = loadOf.containsKey(id) ? id : bundleOf.getOrDefault(id, "");
      object(
          id + " is on the list of load " + loadOf.get(bundleId) + ", so it is nothing extra",
          "correct its load in bundles.csv, then count again");
    } else if (progress.extras().stream()
        .anyMatch(e -> e.loadId().equals(count.loadId()) && e.id().equals(id))) {
      object("The extra " + id + " is recorded already", "leave it out");
    }
  }

  private void object(String sentence, String wayOut) {
    objections.add(new Contradiction(progress.events().size() + 1, sentence, wayOut));
  }

  /** The events to record, numbered on: the arrival, unless it is recorded, and what was found. */
  public List<Event> events(LocalDateTime at, String by) {
    List<Event> events = new ArrayList<>();
    int before = progress.events().size();
    if (!progress.arrived().containsKey(count.loadId())) {
      events.add(new Event.Arrived(before + 1, at, by, count.loadId()));
    }
    bundlesFirst(count.missing())
        .forEach(
            (id, note) ->
                events.add(new Event.Missing(before + events.size() + 1, at, by, id, note)));
    bundlesFirst(count.damaged())
        .forEach(
            (id, note) ->
                events.add(new Event.Damaged(before + events.size() + 1, at, by, id, note)));
    count
        .extras()
        .forEach(
            (id, note) ->
                events.add(
                    new Event.Extra(before + events.size() + 1, at, by, count.loadId(), id, note)));
    return List.copyOf(events);
  }

  private Map<String, String> bundlesFirst(Map<String, String> notes) {
    Map<String, String> sorted = new LinkedHashMap<>();
    notes.forEach((id, note) -> putIf(loadOf.containsKey(id), sorted, id, note));
    notes.forEach((id, note) -> putIf(!loadOf.containsKey(id), sorted, id, note));
    return sorted;
  }

  private static void putIf(boolean wanted, Map<String, String> map, String id, String note) {
    if (wanted) {
      map.put(id, note);
    }
  }
}
