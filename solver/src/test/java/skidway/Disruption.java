package skidway;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import skidway.erection.HoldPoint;
import skidway.erection.Placement;
import skidway.job.Job;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.progress.Event;
import skidway.progress.Progress;
import skidway.progress.Remaining;
import skidway.site.SpotKind;
import skidway.timber.Bundle;
import skidway.timber.Load;

/** A drawn turn of events, each event taken only if nothing speaks against it. */
final class Disruption {
  private static final LocalDateTime NOON = LocalDateTime.of(2031, 6, 2, 12, 0);

  private final Job job;
  private final Plan plan;
  private final List<Event> events = new ArrayList<>();

  private Disruption(Job job, Plan plan) {
    this.job = job;
    this.plan = plan;
  }

  /**
   * Load by load comes down; then some of: a late load, a lost bundle, a broken piece, a detour.
   */
  static List<Event> of(Job job, Plan plan, Random random) {
    Disruption told = new Disruption(job, plan);
    List<Load> loads = job.task().delivery().loads();
    int here = loads.size() == 1 ? 1 : 1 + random.nextInt(loads.size() - 1);
    for (Load load : loads.subList(0, here)) {
      told.add(seq -> new Event.Arrived(seq, NOON, "test", load.id()));
    }
    List<Bundle> down =
        job.task().delivery().bundles().stream()
            .filter(b -> loads.subList(0, here).stream().anyMatch(l -> l.id().equals(b.loadId())))
            .toList();
    if (random.nextBoolean()) {
      String lost = down.get(random.nextInt(down.size())).id();
      told.add(seq -> new Event.Missing(seq, NOON, "test", lost));
    }
    boolean detour = random.nextBoolean();
    for (Stack stack : plan.stacks()) {
      for (String id : stack.bundleIds()) {
        told.place(id, stack.spot().id(), detour && random.nextInt(8) == 0 ? random : null);
      }
    }
    if (here < loads.size()) {
      String late = loads.get(here).id();
      LocalDateTime until = loads.get(here).arrival().plusDays(1 + random.nextInt(5));
      told.add(seq -> new Event.Late(seq, NOON, "test", late, until));
    }
    HoldPoint hold = Remaining.hold(job.task(), told.progress());
    List<Placement> can =
        hold.resequenced().stream().filter(p -> told.lies(p.piece().mark())).toList();
    List<String> pulled = new ArrayList<>();
    for (Placement p : can.subList(0, can.isEmpty() ? 0 : random.nextInt(can.size() / 2 + 1))) {
      pulled.add(p.piece().mark());
    }
    if (!pulled.isEmpty()) {
      told.add(seq -> new Event.Pulled(seq, NOON, "test", "", pulled));
    }
    if (random.nextBoolean()) {
      String broken =
          job.task()
              .delivery()
              .pieces()
              .get(random.nextInt(job.task().delivery().pieces().size()))
              .mark();
      told.add(seq -> new Event.Damaged(seq, NOON, "test", broken));
    }
    return told.events;
  }

  private Progress progress() {
    return Progress.of(job.task(), plan, events);
  }

  private void add(IntFunction<Event> event) {
    Event next = event.apply(events.size() + 1);
    if (progress().check(next).isEmpty()) {
      events.add(next);
    }
  }

  private boolean lies(String mark) {
    return job.task().delivery().bundles().stream()
        .filter(b -> b.pieces().stream().anyMatch(p -> p.mark().equals(mark)))
        .anyMatch(b -> progress().spotOf(b.id()).isPresent());
  }

  private void place(String bundleId, String spotId, @Nullable Random elsewhere) {
    String spot = spotId;
    if (elsewhere != null) {
      List<Stack> stacks = plan.stacks();
      spot = stacks.get(elsewhere.nextInt(stacks.size())).spot().id();
    }
    boolean rack = progress().spots().get(spot).kind() == SpotKind.RACK;
    String at = spot;
    int tier = rack ? 0 : progress().lying().getOrDefault(at, List.of()).size() + 1;
    add(seq -> new Event.Placed(seq, NOON, "test", bundleId, at, tier));
  }
}
