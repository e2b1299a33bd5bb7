package skidway.progress;

import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.testkit.PlanBuilder;
import skidway.testkit.Tasks;

/**
 * A small job and what happens in it, a minute apart: load L1 brings B1 (two pieces of wall W1's
 * first course), B2 (its second course) and B3 (short pieces for the rack), load L2 brings B4.
 */
final class Diary {
  static final LocalDateTime START = LocalDateTime.of(2031, 5, 5, 8, 0);

  static final Task TASK =
      Tasks.task(
          aSite().build(),
          aBundle("B1").load("L1", 1).piece("W1", 1, 1, 4).piece("W1", 1, 2, 3).build(),
          aBundle("B2").load("L1", 2).piece("W1", 2, 1, 4).build(),
          aBundle("B3").load("L1", 3).piece("W2", 1, 1, 1).piece("W2", 2, 1, 1).build(),
          aBundle("B4").load("L2", 1).piece("W3", 1, 1, 4).build());

  static final Plan PLAN =
      PlanBuilder.aPlan()
          .stack(spot("Y1", "yard", 8, 9, 5, 1), "B1", "B2")
          .stack(rack("YR1", "yard", 14, 9, 2, 1), "B3")
          .stack(spot("Y2", "yard", 20, 9, 5, 1), "B4")
          .build(TASK);

  private final List<Event> events = new ArrayList<>();
  private LocalDateTime now = START;

  /** Makes an event as the next one. */
  interface Making {
    Event at(int seq, LocalDateTime at, String by);
  }

  Diary arrived(String load) {
    return add((n, t, b) -> new Event.Arrived(n, t, b, load));
  }

  Diary placed(String bundle, String spot, int tier) {
    return add((n, t, b) -> new Event.Placed(n, t, b, bundle, spot, tier));
  }

  Diary moved(String bundle, String spot, int tier) {
    return add((n, t, b) -> new Event.Moved(n, t, b, bundle, spot, tier));
  }

  Diary missing(String id) {
    return add((n, t, b) -> new Event.Missing(n, t, b, id));
  }

  Diary damaged(String id) {
    return add((n, t, b) -> new Event.Damaged(n, t, b, id));
  }

  Diary found(String id) {
    return add((n, t, b) -> new Event.Found(n, t, b, id));
  }

  Diary late(String load, LocalDateTime until) {
    return add((n, t, b) -> new Event.Late(n, t, b, load, until));
  }

  Diary pulled(String... marks) {
    return add((n, t, b) -> new Event.Pulled(n, t, b, "", List.of(marks)));
  }

  Diary undo(int seq) {
    return add((n, t, b) -> new Event.Undo(n, t, b, seq));
  }

  /** Sets the clock; without it every event is a minute after the one before. */
  Diary clock(LocalDateTime time) {
    now = time;
    return this;
  }

  Diary add(Making making) {
    events.add(making.at(events.size() + 1, now, "Ann"));
    now = now.plusMinutes(1);
    return this;
  }

  List<Event> events() {
    return List.copyOf(events);
  }

  Progress progress() {
    return Progress.of(TASK, PLAN, events);
  }

  /** What speaks against the last event after those before it. */
  List<Contradiction> against() {
    int last = events.size() - 1;
    return Progress.of(TASK, PLAN, events.subList(0, last)).check(events.get(last));
  }
}
