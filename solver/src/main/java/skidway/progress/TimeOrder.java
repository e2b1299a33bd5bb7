package skidway.progress;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whether an event may be dated before others that are recorded already. Much is recorded in the
 * evening, and what was forgotten later still; but all of it together must be something that can
 * have happened in the order of its times.
 */
final class TimeOrder {
  private final Progress before;

  TimeOrder(Progress before) {
    this.before = before;
  }

  /** The first thing that speaks against it; nothing when it is dated after all others. */
  List<Contradiction> against(Event event) {
    boolean last = before.events().stream().noneMatch(e -> e.at().isAfter(event.at()));
    if (last && !(event instanceof Event.Undo)) {
      return List.of();
    }
    Set<Integer> known =
        before.inOrderOfTimes().contradictions().stream()
            .map(Contradiction::seq)
            .collect(Collectors.toSet());
    return before.with(event).inOrderOfTimes().contradictions().stream()
        .filter(found -> !known.contains(found.seq()))
        .limit(1)
        .map(found -> inWords(event, found))
        .toList();
  }

  private Contradiction inWords(Event event, Contradiction found) {
    if (found.seq() == event.seq()) {
      return new Contradiction(
          event.seq(),
          "Dated "
              + EventWords.time(event.at())
              + ", it comes before what is recorded already: "
              + found.sentence(),
          "correct the time, or undo what happened later and record all in its order");
    }
    Event other = before.events().get(found.seq() - 1);
    return new Contradiction(
        event.seq(),
        "With "
            + EventWords.of(event)
            + " at "
            + EventWords.time(event.at())
            + ", event "
            + other.seq()
            + " ("
            + EventWords.of(other)
            + ") of "
            + EventWords.time(other.at())
            + " could not have happened: "
            + found.sentence(),
        "correct the time, or undo event " + other.seq() + " first");
  }
}
