package skidway;

import java.util.Set;
import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.audit.WaveAudit;
import skidway.audit.walk.PathFlood;
import skidway.job.History;
import skidway.job.Job;
import skidway.job.PlanFiles;
import skidway.plan.Heeded;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.WavePlan;
import skidway.shakeout.Waves;
import skidway.staging.SearchLimits;
import skidway.staging.Stager;
import skidway.staging.StopButton;
import skidway.staging.Watcher;

/**
 * Plans a job: stages it, lets the audit's flood look for shut paths while it searches, puts the
 * audit's margins and the labels of the next revision onto the result, and hands over what the
 * audit found.
 */
public final class Planner {
  /**
   * A plan and what the audit says of it.
   *
   * @param audit of this very plan; bundles without a spot are among its findings
   */
  public record Planned(Plan plan, AuditReport audit) {}

  private Planner() {}

  /** The next revision of a job's plan, not yet written. */
  public static Planned plan(Job job, SearchLimits limits, Watcher watcher, StopButton stop) {
    return plan(job, job.task(), Heeded.NONE, limits, watcher, stop);
  }

  /** A revision for a turn of events that the job's files do not tell of. */
  static Planned plan(Job job, Task task, SearchLimits limits, Watcher watcher, StopButton stop) {
    return plan(job, task, Heeded.NONE, limits, watcher, stop);
  }

  /**
   * The next revision when something lies there already and more has happened: what is left to do.
   *
   * @param locked bundles that shall stay where they lie
   */
  public static Planned replan(
      History history, Set<String> locked, SearchLimits limits, Watcher watcher, StopButton stop) {
    Task task = history.remaining(locked);
    return plan(history.job(), task, history.heeded(), limits, watcher, stop);
  }

  /** How the bundles of a plan are used up in waves; not yet written. */
  public static WavePlan waves(Task task, Plan plan, String fingerprint) {
    WaveAudit audit = new WaveAudit(task, plan);
    return Waves.of(task, plan, audit::faulty).of(fingerprint);
  }

  private static Planned plan(
      Job job, Task task, Heeded heeded, SearchLimits limits, Watcher watcher, StopButton stop) {
    PathFlood flood = new PathFlood(task);
    Plan staged = Stager.stage(task, limits, flood::shutBy, watcher, stop);
    String previous = PlanFiles.newest(job.folder()).map(PlanFiles::fingerprint).orElse("");
    Plan labelled =
        staged.labelled(PlanFiles.nextRevision(job.folder()), job.fingerprint(), previous, heeded);
    AuditReport audit = Audit.of(task, labelled);
    return new Planned(labelled.withMargins(audit.margins()), audit);
  }
}
