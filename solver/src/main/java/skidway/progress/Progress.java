package skidway.progress;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.site.Spot;

/**
 * What the recorded events come to: which trucks came, where each bundle lies, what is missing or
 * damaged and which pieces are pulled. Immutable; the same events give the same progress.
 *
 * <p>An event that cannot have happened after those before it has no effect and is listed in {@link
 * #contradictions}; none is recorded that way, but the job's files may be changed later.
 */
public final class Progress {
  private final Task task;
  private final Plan plan;
  private final List<Spot> earlier;
  private final List<Event> events;
  private final Tally tally;
  private final List<Contradiction> contradictions = new ArrayList<>();

  private Progress(Task task, Plan plan, List<Spot> earlier, List<Event> events) {
    this.task = task;
    this.plan = plan;
    this.earlier = List.copyOf(earlier);
    this.events = List.copyOf(events);
    this.tally = new Tally(new Roll(task, plan, earlier));
    Map<Integer, Integer> undone = Undone.of(this.events);
    for (Event event : this.events) {
      if (!undone.containsKey(event.seq())) {
        count(event);
      }
    }
  }

  private void count(Event recorded) {
    Event event = recorded instanceof Event.Pulled pulled ? stillListed(pulled) : recorded;
    List<Contradiction> found = EventCheck.of(event, tally);
    contradictions.addAll(found);
    if (found.isEmpty()) {
      event.match(tally);
    }
  }

  /**
   * A corrected list may lack a piece that was pulled with others; those are in the wall all the
   * same.
   */
  private Event stillListed(Event.Pulled event) {
    List<String> known = event.marks().stream().filter(tally.roll.pieces::containsKey).toList();
    if (known.isEmpty() || known.size() == event.marks().size()) {
      return event;
    }
    for (String mark : event.marks()) {
      if (!tally.roll.pieces.containsKey(mark)) {
        contradictions.add(
            new Contradiction(
                event.seq(),
                "Piece " + mark + " is on no list any more; what was pulled with it counts",
                "put it back into pieces.csv if it is in the wall"));
      }
    }
    return new Event.Pulled(event.seq(), event.at(), event.by(), event.through(), known);
  }

  /**
   * Folds events in the order in which they were recorded.
   *
   * @param plan the newest plan: it says which spots there are
   * @throws IllegalArgumentException if they are not numbered 1, 2, …
   */
  public static Progress of(Task task, Plan plan, List<Event> events) {
    return of(task, plan, List.of(), events);
  }

  /**
   * The same, when bundles may lie on spots that the newest plan does not have.
   *
   * @param earlier spots of plans before; of two with one code the newest plan's counts
   */
  public static Progress of(Task task, Plan plan, List<Spot> earlier, List<Event> events) {
    for (int i = 0; i < events.size(); i++) {
      if (events.get(i).seq() != i + 1) {
        throw new IllegalArgumentException("The events must be numbered from 1 without a gap.");
      }
    }
    return new Progress(task, plan, earlier, events);
  }

  /** The progress after one more event, whatever speaks against it. */
  public Progress with(Event event) {
    return of(task, plan, earlier, Stream.concat(events.stream(), Stream.of(event)).toList());
  }

  /** What speaks against an event as the next one; empty when nothing does. */
  public List<Contradiction> check(Event event) {
    List<Contradiction> found =
        event instanceof Event.Undo undo
            ? new UndoCheck(this).of(undo)
            : EventCheck.of(event, tally);
    return found.isEmpty() ? new TimeOrder(this).against(event) : found;
  }

  /** What speaks against several events one after the other: against the first that is refused. */
  public List<Contradiction> check(List<Event> next) {
    Progress now = this;
    for (Event event : next) {
      List<Contradiction> found = now.check(event);
      if (!found.isEmpty()) {
        return found;
      }
      now = now.with(event);
    }
    return List.of();
  }

  /**
   * What the events in force come to in the order of their times; those of one minute stay in the
   * order of recording.
   */
  Progress inOrderOfTimes() {
    Map<Integer, Integer> undone = undone();
    List<Event> inForce =
        events.stream()
            .filter(e -> !(e instanceof Event.Undo) && !undone.containsKey(e.seq()))
            .sorted(Comparator.comparing(Event::at))
            .toList();
    return new Progress(task, plan, earlier, inForce);
  }

  /** All events, also those undone, in the order of recording. */
  public List<Event> events() {
    return events;
  }

  /** Numbers of the events that were taken back, and of the undo that did it. */
  public Map<Integer, Integer> undone() {
    return Undone.of(events);
  }

  /** Events that cannot have happened by what the job's files say now. */
  public List<Contradiction> contradictions() {
    return List.copyOf(contradictions);
  }

  /** The loads that are here, and since when, in the order in which that was recorded. */
  public Map<String, LocalDateTime> arrived() {
    return Collections.unmodifiableMap(tally.arrived);
  }

  /**
   * When a load is expected by the newest word; its planned arrival when there was none.
   *
   * @throws IllegalArgumentException if the job has no such load
   */
  public LocalDateTime expected(String loadId) {
    LocalDateTime planned = Roll.known(tally.roll.loads, loadId).arrival();
    return tally.expected.getOrDefault(loadId, planned);
  }

  /** Spots on which something lies, in the plan's order, and their bundles from bottom to top. */
  public Map<String, List<String>> lying() {
    Map<String, List<String>> lying = new LinkedHashMap<>();
    for (String spotId : tally.roll.spots.keySet()) {
      if (!tally.on(spotId).isEmpty()) {
        lying.put(spotId, List.copyOf(tally.on(spotId)));
      }
    }
    return Collections.unmodifiableMap(lying);
  }

  /** The spot of a bundle, if it lies on one. */
  public Optional<String> spotOf(String bundleId) {
    return Optional.of(tally.spotOf(bundleId)).filter(s -> !s.isEmpty());
  }

  /** Bundles not put down yet, whether their load is here or not, in the order off the trucks. */
  public Set<String> onTruck() {
    Set<String> bundles = new LinkedHashSet<>();
    for (String id : tally.roll.bundles.keySet()) {
      if (!tally.lies(id) && !tally.missing.containsKey(id) && !tally.usedUp(id)) {
        bundles.add(id);
      }
    }
    return Collections.unmodifiableSet(bundles);
  }

  /** Bundles of which no piece is left. */
  public Set<String> usedUp() {
    Set<String> bundles = new LinkedHashSet<>(tally.roll.bundles.keySet());
    bundles.removeIf(id -> !tally.usedUp(id));
    return Collections.unmodifiableSet(bundles);
  }

  /** Bundles and pieces recorded missing, by the ids they were recorded with. */
  public Set<String> missing() {
    return Collections.unmodifiableSet(tally.missing.keySet());
  }

  /** Bundles and pieces recorded damaged, by the ids they were recorded with. */
  public Set<String> damaged() {
    return Collections.unmodifiableSet(tally.damaged.keySet());
  }

  /** What came beside the lists, in the order in which that was recorded. */
  public List<Event.Extra> extras() {
    return List.copyOf(tally.extras);
  }

  /** The event by which something of {@link #missing} or {@link #damaged} became so. */
  public Optional<Event> said(String id) {
    return Optional.ofNullable(tally.said.get(id));
  }

  /** Marks of all pieces that nobody can count on: missing or damaged, alone or in their bundle. */
  public Set<String> withheld() {
    Set<String> marks = new LinkedHashSet<>(tally.roll.pieces.keySet());
    marks.removeIf(mark -> tally.pulled.containsKey(mark) || !tally.withheld(mark));
    return Collections.unmodifiableSet(marks);
  }

  /** Marks of the pieces that are pulled, in the order in which that was recorded. */
  public Set<String> pulled() {
    return Collections.unmodifiableSet(tally.pulled.keySet());
  }

  /** Every spot that can be named: of the plan, its waiting places, the site, plans before. */
  public Map<String, Spot> spots() {
    return Collections.unmodifiableMap(tally.roll.spots);
  }
}
