package skidway.progress;

import java.util.List;

/** What an event names of the lists: loads, bundles and pieces, by their ids. */
public final class EventNames implements Event.Cases<List<String>> {
  private static final EventNames NAMES = new EventNames();

  private EventNames() {}

  public static List<String> of(Event event) {
    return event.match(NAMES);
  }

  @Override
  public List<String> arrived(Event.Arrived event) {
    return List.of(event.loadId());
  }

  @Override
  public List<String> placed(Event.Placed event) {
    return List.of(event.bundleId());
  }

  @Override
  public List<String> moved(Event.Moved event) {
    return List.of(event.bundleId());
  }

  @Override
  public List<String> missing(Event.Missing event) {
    return List.of(event.id());
  }

  @Override
  public List<String> damaged(Event.Damaged event) {
    return List.of(event.id());
  }

  @Override
  public List<String> extra(Event.Extra event) {
    return List.of(event.loadId());
  }

  @Override
  public List<String> found(Event.Found event) {
    return List.of(event.id());
  }

  @Override
  public List<String> late(Event.Late event) {
    return List.of(event.loadId());
  }

  @Override
  public List<String> pulled(Event.Pulled event) {
    return event.marks();
  }

  @Override
  public List<String> undo(Event.Undo event) {
    return List.of();
  }
}
