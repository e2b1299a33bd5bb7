package skidway.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import skidway.plan.Plan;
import skidway.progress.Event;
import skidway.progress.Progress;
import skidway.site.Spot;

/**
 * The progress of a job, told with the help of the plans its events were recorded against: a code
 * painted on the ground means the place that the plan of that day gave it.
 *
 * @param remarks what cannot be told for sure, as sentences
 */
public record SiteProgress(Progress progress, List<String> remarks) {
  public SiteProgress {
    remarks = List.copyOf(remarks);
  }

  /**
   * Folds a job's events.
   *
   * @param newest the newest plan
   * @throws BadInput if an earlier plan that is as it was cannot be read for another reason
   */
  public static SiteProgress of(Job job, Plan newest, EventLog log) {
    Set<PlanMark> marks = new LinkedHashSet<>();
    log.entries().forEach(entry -> marks.add(entry.plan()));
    List<String> remarks = new ArrayList<>();
    Map<PlanMark, Map<String, Spot>> spots = new LinkedHashMap<>();
    for (PlanMark mark : marks) {
      plan(job, mark, remarks).ifPresent(plan -> spots.put(mark, spots(plan)));
    }
    List<Spot> earlier = new ArrayList<>();
    for (Map<String, Spot> some : spots.values()) {
      earlier.addAll(0, some.values()); // of two earlier plans the later one counts
    }
    Progress progress = Progress.of(job.task(), newest, earlier, log.events());
    lastPut(log, progress).values().stream()
        .flatMap(entry -> elsewhere(entry, spots, progress, newest).stream())
        .forEach(remarks::add);
    return new SiteProgress(progress, remarks);
  }

  private static Optional<Plan> plan(Job job, PlanMark mark, List<String> remarks) {
    Optional<Path> file = PlanFiles.ofRevision(job.folder(), mark.revision());
    if (file.filter(f -> PlanFiles.fingerprint(f).equals(mark.fingerprint())).isPresent()) {
      return Optional.of(PlanFiles.read(file.get(), job.task()));
    }
    remarks.add(
        "Plan "
            + mark.revision()
            + (file.isPresent() ? " was changed" : " is gone")
            + " since events were recorded against it; whether its spots are still where they were"
            + " cannot be told.");
    return Optional.empty();
  }

  private static Map<String, Spot> spots(Plan plan) {
    Map<String, Spot> spots = new LinkedHashMap<>();
    plan.spots().forEach(spot -> spots.putIfAbsent(spot.id(), spot));
    return spots;
  }

  /** For each bundle that lies somewhere, the event that put it there. */
  private static Map<String, EventLog.Entry> lastPut(EventLog log, Progress progress) {
    Map<String, EventLog.Entry> last = new LinkedHashMap<>();
    Set<Integer> undone = progress.undone().keySet();
    for (EventLog.Entry entry : log.entries()) {
      String bundleId = bundleId(entry.event());
      if (progress.spotOf(bundleId).isPresent() && !undone.contains(entry.event().seq())) {
        last.put(bundleId, entry);
      }
    }
    return last;
  }

  private static String bundleId(Event event) {
    if (event instanceof Event.Placed placed) {
      return placed.bundleId();
    }
    return event instanceof Event.Moved moved ? moved.bundleId() : "";
  }

  private static Optional<String> elsewhere(
      EventLog.Entry put, Map<PlanMark, Map<String, Spot>> spots, Progress progress, Plan newest) {
    String bundleId = bundleId(put.event());
    String spotId = progress.spotOf(bundleId).orElseThrow();
    Optional<Spot> then =
        Optional.ofNullable(spots.getOrDefault(put.plan(), Map.of()).get(spotId))
            .filter(spot -> !spot.equals(progress.spots().get(spotId)));
    return then.map(
        spot ->
            "Bundle "
                + bundleId
                + " was put down at "
                + spotId
                + " of plan "
                + put.plan().revision()
                + "; plan "
                + newest.revision()
                + " calls another place "
                + spotId
                + ". Do not look for it there; record where it was moved to.");
  }
}
