package skidway.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import skidway.plan.Heeded;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.progress.Event;
import skidway.progress.Progress;
import skidway.progress.Remaining;
import skidway.site.Spot;
import skidway.units.Figures;

/**
 * A job with all that was planned and recorded of it so far.
 *
 * @param plans the revisions, oldest first
 * @param events in the order of recording
 * @param checks the check values of those events that stand in the job's file
 */
public record History(Job job, List<Plan> plans, List<Event> events, List<String> checks) {
  public History {
    plans = List.copyOf(plans);
    events = List.copyOf(events);
    checks = List.copyOf(checks);
  }

  /** A turn of events that stands in no file. */
  public History(Job job, List<Plan> plans, List<Event> events) {
    this(job, plans, events, List.of());
  }

  /**
   * Reads all revisions and events of a job.
   *
   * @throws BadInput if one of them is not as it was written, or a plan of another job
   */
  public static History of(Job job) {
    List<Plan> plans = new ArrayList<>();
    int last = PlanFiles.nextRevision(job.folder()) - 1;
    for (int revision = 1; revision <= last; revision++) {
      Optional<Path> file = PlanFiles.ofRevision(job.folder(), revision);
      file.ifPresent(path -> plans.add(planOf(job, path)));
    }
    EventLog log = EventsFile.read(job);
    return new History(job, plans, log.events(), log.checks());
  }

  private static Plan planOf(Job job, Path file) {
    Plan plan = PlanFiles.read(file, job.task());
    if (!plan.jobName().equals(job.task().jobName())) {
      throw new BadInput(
          List.of(
              new SourceFile(file.toString(), "")
                  .whole()
                  .problem(
                      "a plan of \"" + plan.jobName() + '"',
                      "this job is called \"" + job.task().jobName() + '"',
                      "put the file back into its own job; or, if the job was given another name,"
                          + " give back the one it had")),
          0);
    }
    return plan;
  }

  /** The newest revision. */
  public Optional<Plan> newest() {
    return plans.isEmpty() ? Optional.empty() : Optional.of(plans.get(plans.size() - 1));
  }

  /** What a plan made now heeds: all that happened. */
  public Heeded heeded() {
    return new Heeded(events.size(), checkOf(events.size()).orElse(""));
  }

  /** Where everything is by now. */
  public Progress progress() {
    return progress(plans, events);
  }

  /**
   * The question that is left now.
   *
   * @param locked bundles that shall stay where they lie
   */
  public Task remaining(Set<String> locked) {
    return Remaining.of(job.task(), plans, progress(), locked);
  }

  /**
   * The question that a revision answers: the whole job, or what was left of it then.
   *
   * @throws BadInput if it heeds events that are not there, or others
   */
  public Task taskOf(Plan plan) {
    if (plan.events() == 0) {
      return job.task();
    }
    requireEventsOf(plan);
    List<Plan> before = plans.stream().filter(p -> p.revision() < plan.revision()).toList();
    Progress then = progress(before, events.subList(0, plan.events()));
    return Remaining.of(job.task(), before, then, Set.of());
  }

  /**
   * Refuses to go on where events are lost or exchanged.
   *
   * @throws BadInput if a revision heeds events that are not there, or others
   */
  public void requireEventsOf(Plan plan) {
    if (plan.events() > events.size()) {
      throw lost(events.size(), plan.revision(), plan.events(), "");
    }
    String heeded = plan.heeded().check();
    Optional<String> there = checkOf(plan.events());
    if (!heeded.isEmpty() && there.isPresent() && !heeded.equals(there.get())) {
      throw exchanged(plan, there.get());
    }
  }

  /** Of the event with a number, if it stands in the file. */
  private Optional<String> checkOf(int seq) {
    return seq > 0 && seq <= checks.size() ? Optional.of(checks.get(seq - 1)) : Optional.empty();
  }

  /**
   * Refuses to plan an empty site where a revision knows that something lies there. A plan that is
   * no good otherwise says that much all the same.
   *
   * @throws BadInput if a revision heeds events, or cannot be asked
   */
  public static void requireNothingHeeded(Path folder) {
    for (int revision = PlanFiles.nextRevision(folder) - 1; revision > 0; revision--) {
      int heeded = PlanFiles.ofRevision(folder, revision).map(PlanFiles::heeded).orElse(0);
      if (heeded > 0) {
        throw lost(
            0, revision, heeded, "; or, if this job begins anew, move its plans elsewhere too");
      }
    }
  }

  private static BadInput lost(int there, int revision, int heeded, String orElse) {
    return new BadInput(
        List.of(
            new SourceFile(EventsFile.NAME, "")
                .whole()
                .problem(
                    there == 0 ? "no events" : Figures.counted(there, "event"),
                    "revision " + revision + " heeds " + heeded,
                    "put the file back from a copy of the folder" + orElse)),
        0);
  }

  private static BadInput exchanged(Plan plan, String there) {
    return new BadInput(
        List.of(
            new SourceFile(EventsFile.NAME, "")
                .at(plan.events(), 1)
                .problem(
                    "other events: the check of event " + plan.events() + " is " + there,
                    "revision "
                        + plan.revision()
                        + " heeds events 1 to "
                        + plan.events()
                        + ", and the check of the last of them is "
                        + Quote.shortened(plan.heeded().check()),
                    "put the file that this plan was made from back from a copy of the folder; or,"
                        + " if these events are what happened, move the plan file of revision "
                        + plan.revision()
                        + " elsewhere and 'restage'")),
        0);
  }

  /** Of two spots with one code the newest revision's counts. */
  private Progress progress(List<Plan> revisions, List<Event> some) {
    Plan newest = revisions.get(revisions.size() - 1);
    List<Spot> earlier = new ArrayList<>();
    for (Plan plan : revisions) {
      earlier.addAll(0, plan.spots());
    }
    return Progress.of(job.task(), newest, earlier, some);
  }
}
