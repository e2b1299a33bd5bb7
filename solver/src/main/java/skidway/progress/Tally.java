package skidway.progress;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import skidway.timber.Piece;

/**
 * The running count while events are folded, one after the other; each is checked before it is
 * counted. A bundle that has been used up lies nowhere any more, and what lay on it comes down.
 */
final class Tally implements Event.Cases<Tally> {
  final Roll roll;

  /** When each load, missing thing, damaged thing and pulled piece became so. */
  final Map<String, LocalDateTime> arrived = new LinkedHashMap<>();

  final Map<String, LocalDateTime> missing = new LinkedHashMap<>();
  final Map<String, LocalDateTime> damaged = new LinkedHashMap<>();
  final Map<String, LocalDateTime> pulled = new LinkedHashMap<>();

  /** What came beside the lists, in the order in which that was recorded. */
  final List<Event.Extra> extras = new ArrayList<>();

  /** What was said of each missing or damaged thing, last. */
  final Map<String, Event> said = new HashMap<>();

  /** When each late load is expected now, and since when that is known. */
  final Map<String, LocalDateTime> expected = new HashMap<>();

  final Map<String, LocalDateTime> expectedSince = new HashMap<>();

  /** When each bundle was put down, and when each spot last changed. */
  final Map<String, LocalDateTime> downSince = new HashMap<>();

  final Map<String, LocalDateTime> changed = new HashMap<>();

  private final Map<String, String> spotOf = new HashMap<>();
  private final Map<String, List<String>> stacks = new HashMap<>();

  Tally(Roll roll) {
    this.roll = roll;
  }

  boolean lies(String bundleId) {
    return spotOf.containsKey(bundleId);
  }

  /** The spot of a bundle that lies somewhere; otherwise an empty text. */
  String spotOf(String bundleId) {
    return spotOf.getOrDefault(bundleId, "");
  }

  /** Bundles on a spot, bottom to top; in a rack in the order in which they came. */
  List<String> on(String spotId) {
    return stacks.getOrDefault(spotId, List.of());
  }

  /** Whether no piece of a bundle is left: each was pulled or is missing, and one was pulled. */
  boolean usedUp(String bundleId) {
    List<Piece> pieces = roll.bundle(bundleId).pieces();
    return pieces.stream().anyMatch(p -> pulled.containsKey(p.mark()))
        && pieces.stream()
            .allMatch(p -> pulled.containsKey(p.mark()) || missing.containsKey(p.mark()));
  }

  /** Whether a piece is missing or damaged, by itself or with its bundle. */
  boolean withheld(String mark) {
    String bundleId = roll.bundleOfMark.getOrDefault(mark, "");
    return missing.containsKey(mark)
        || damaged.containsKey(mark)
        || missing.containsKey(bundleId)
        || damaged.containsKey(bundleId);
  }

  @Override
  public Tally arrived(Event.Arrived event) {
    arrived.put(event.loadId(), event.at());
    return this;
  }

  @Override
  public Tally placed(Event.Placed event) {
    downSince.put(event.bundleId(), event.at());
    put(event.bundleId(), event.spotId(), event.at());
    return this;
  }

  @Override
  public Tally moved(Event.Moved event) {
    lift(event.bundleId(), event.at());
    put(event.bundleId(), event.spotId(), event.at());
    return this;
  }

  @Override
  public Tally missing(Event.Missing event) {
    missing.put(event.id(), event.at());
    said.put(event.id(), event);
    if (roll.bundles.containsKey(event.id())) {
      lift(event.id(), event.at());
    } else {
      clearIfUsedUp(event.id(), event.at());
    }
    return this;
  }

  /** A piece that came to grief after it was pulled is not in the wall. */
  @Override
  public Tally damaged(Event.Damaged event) {
    damaged.put(event.id(), event.at());
    said.put(event.id(), event);
    if (!roll.bundles.containsKey(event.id())) {
      pulled.remove(event.id());
    }
    return this;
  }

  @Override
  public Tally extra(Event.Extra event) {
    extras.add(event);
    return this;
  }

  @Override
  public Tally found(Event.Found event) {
    said.remove(event.id());
    missing.remove(event.id());
    damaged.remove(event.id());
    return this;
  }

  @Override
  public Tally late(Event.Late event) {
    expected.put(event.loadId(), event.until());
    expectedSince.put(event.loadId(), event.at());
    return this;
  }

  @Override
  public Tally pulled(Event.Pulled event) {
    event.marks().forEach(mark -> pulled.put(mark, event.at()));
    event.marks().forEach(mark -> clearIfUsedUp(mark, event.at()));
    return this;
  }

  /** Has done its work before the fold: what it takes back is not counted at all. */
  @Override
  public Tally undo(Event.Undo event) {
    return this;
  }

  private void clearIfUsedUp(String mark, LocalDateTime at) {
    String bundleId = roll.bundleOfMark.getOrDefault(mark, "");
    if (lies(bundleId) && usedUp(bundleId)) {
      lift(bundleId, at);
    }
  }

  private void put(String bundleId, String spotId, LocalDateTime at) {
    spotOf.put(bundleId, spotId);
    stacks.computeIfAbsent(spotId, s -> new ArrayList<>()).add(bundleId);
    changed.merge(spotId, at, Tally::later);
  }

  private void lift(String bundleId, LocalDateTime at) {
    if (lies(bundleId)) {
      String spotId = spotOf(bundleId);
      spotOf.remove(bundleId);
      Roll.known(stacks, spotId).remove(bundleId);
      changed.merge(spotId, at, Tally::later);
    }
  }

  /** Pieces may be recorded late; a spot never changed before it last did. */
  private static LocalDateTime later(LocalDateTime a, LocalDateTime b) {
    return a.isAfter(b) ? a : b;
  }
}
