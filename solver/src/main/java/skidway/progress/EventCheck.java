package skidway.progress;

import java.util.List;

/** Says what speaks against an event after those that were counted before it. */
final class EventCheck implements Event.Cases<List<Contradiction>> {
  private static final String NAME_A_LOAD = "name a load of loads.csv";

  private final Tally tally;

  private EventCheck(Tally tally) {
    this.tally = tally;
  }

  static List<Contradiction> of(Event event, Tally tally) {
    return event.match(new EventCheck(tally));
  }

  @Override
  public List<Contradiction> arrived(Event.Arrived event) {
    Objections no = new Objections(event);
    String id = event.loadId();
    if (!no.unknown("load", id, tally.roll.loads.keySet(), NAME_A_LOAD)
        && tally.arrived.containsKey(id)) {
      no.add(
          "Load " + id + " arrived already, at " + EventWords.time(Roll.known(tally.arrived, id)),
          "record where its bundles are placed");
    }
    return no.all();
  }

  @Override
  public List<Contradiction> late(Event.Late event) {
    Objections no = new Objections(event);
    String id = event.loadId();
    if (no.unknown("load", id, tally.roll.loads.keySet(), NAME_A_LOAD)) {
      return no.all();
    }
    if (tally.arrived.containsKey(id)) {
      no.add(
          "Load " + id + " arrived already, at " + EventWords.time(Roll.known(tally.arrived, id)),
          "if it has not, undo its arrival first");
    }
    if (!event.until().isAfter(event.at())) {
      no.add(
          EventWords.time(event.until())
              + " is no time to wait for: this is recorded at "
              + EventWords.time(event.at()),
          "name a later time, or record that it arrived");
    }
    if (tally.expectedSince.containsKey(id)) {
      no.before(Roll.known(tally.expectedSince, id), "Newer word of load " + id + " came");
    }
    return no.all();
  }

  @Override
  public List<Contradiction> placed(Event.Placed event) {
    return new StackCheck(tally).placed(event);
  }

  @Override
  public List<Contradiction> moved(Event.Moved event) {
    return new StackCheck(tally).moved(event);
  }

  @Override
  public List<Contradiction> missing(Event.Missing event) {
    return new PieceCheck(tally).missing(event);
  }

  @Override
  public List<Contradiction> damaged(Event.Damaged event) {
    return new PieceCheck(tally).damaged(event);
  }

  @Override
  public List<Contradiction> extra(Event.Extra event) {
    Objections no = new Objections(event);
    String id = event.loadId();
    if (!no.unknown("load", id, tally.roll.loads.keySet(), NAME_A_LOAD)) {
      if (tally.arrived.containsKey(id)) {
        no.before(Roll.known(tally.arrived, id), "Load " + id + " arrived");
      } else {
        no.add("Load " + id + " has not arrived", "record 'arrived " + id + "' first");
      }
    }
    return no.all();
  }

  @Override
  public List<Contradiction> found(Event.Found event) {
    return new PieceCheck(tally).found(event);
  }

  @Override
  public List<Contradiction> pulled(Event.Pulled event) {
    return new PullCheck(tally).pulled(event);
  }

  /** Depends on all events, not on the count: {@link UndoCheck}. */
  @Override
  public List<Contradiction> undo(Event.Undo event) {
    return List.of();
  }
}
