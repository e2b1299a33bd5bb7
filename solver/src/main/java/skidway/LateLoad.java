package skidway;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import skidway.erection.Placement;
import skidway.erection.Timetable;
import skidway.job.History;
import skidway.job.Job;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.progress.AsPlanned;
import skidway.progress.Event;
import skidway.timber.Bundle;
import skidway.timber.Load;
import skidway.timber.Piece;

/**
 * What has happened by the hour at which the first late load should have come, told as events: the
 * loads before it lie as planned, and nobody knew. Pieces are pulled by then only where the job
 * states a rate; without one a plan counts on none.
 */
final class LateLoad {
  private static final String WHO = "supposed";

  private final Job job;
  private final Plan plan;

  /** Late loads and when they come. */
  private final Map<String, LocalDateTime> late;

  private final LocalDateTime due;
  private final Set<String> lying = new HashSet<>();
  private final List<Event> events = new ArrayList<>();

  private LateLoad(Job job, Plan plan, Map<String, LocalDateTime> late) {
    this.job = job;
    this.plan = plan;
    this.late = late;
    this.due =
        job.task().delivery().loads().stream()
            .filter(load -> late.containsKey(load.id()))
            .map(Load::arrival)
            .min(LocalDateTime::compareTo)
            .orElseThrow();
  }

  /**
   * The history on which the rest is planned anew.
   *
   * @param scenario with a load that is late
   */
  static History of(Job job, Plan plan, Scenario scenario) {
    return new LateLoad(job, plan, late(job.task(), scenario)).history();
  }

  /** Loads that come later than planned, and when; none when all are on time. */
  static Map<String, LocalDateTime> late(Task task, Scenario scenario) {
    return scenario.task().delivery().loads().stream()
        .filter(load -> load.arrival().isAfter(planned(task, load)))
        .collect(Collectors.toMap(Load::id, Load::arrival));
  }

  private static LocalDateTime planned(Task task, Load load) {
    return task.delivery().load(load.id()).orElseThrow().arrival();
  }

  private History history() {
    for (Load load : job.task().delivery().loads()) {
      if (load.arrival().isBefore(due)) {
        unload(load);
      }
    }
    if (job.task().schedule().stated()) {
      pull();
    }
    for (Load load : job.task().delivery().loads()) {
      LocalDateTime until = late.get(load.id());
      if (until != null) {
        add(seq -> new Event.Late(seq, due, WHO, load.id(), until));
      }
    }
    return new History(job, List.of(plan), events);
  }

  private void unload(Load load) {
    LocalDateTime at = load.arrival();
    add(seq -> new Event.Arrived(seq, at, WHO, load.id()));
    for (AsPlanned.Put put : AsPlanned.of(plan, load.id())) {
      boolean first = lying.add(put.bundleId());
      add(
          seq ->
              first
                  ? new Event.Placed(seq, at, WHO, put.bundleId(), put.spotId(), put.tier())
                  : new Event.Moved(seq, at, WHO, put.bundleId(), put.spotId(), put.tier()));
    }
  }

  /** What the schedule says, up to the first piece that is not there. */
  private void pull() {
    Task task = job.task();
    Map<String, String> bundleOf =
        task.delivery().bundles().stream()
            .flatMap(bundle -> bundle.pieces().stream().map(piece -> new In(piece, bundle)))
            .collect(Collectors.toMap(in -> in.piece().mark(), in -> in.bundle().id()));
    List<String> marks =
        task.pullOrder().placements().stream()
            .limit(Timetable.of(task.schedule(), task.pullOrder()).laidBy(due))
            .map(Placement::piece)
            .map(Piece::mark)
            .takeWhile(mark -> lying.contains(bundleOf.get(mark)))
            .toList();
    if (!marks.isEmpty()) {
      add(seq -> new Event.Pulled(seq, due, WHO, "", marks));
    }
  }

  private record In(Piece piece, Bundle bundle) {}

  private void add(IntFunction<Event> event) {
    events.add(event.apply(events.size() + 1));
  }
}
