package skidway;

import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.audit.walk.PathFlood;
import skidway.job.Job;
import skidway.job.PlanFiles;
import skidway.plan.Plan;
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
    PathFlood flood = new PathFlood(job.task());
    Plan staged = Stager.stage(job.task(), limits, flood::shutBy, watcher, stop);
    String previous = PlanFiles.newest(job.folder()).map(PlanFiles::fingerprint).orElse("");
    Plan labelled =
        staged.labelled(PlanFiles.nextRevision(job.folder()), job.fingerprint(), previous);
    AuditReport audit = Audit.of(job.task(), labelled);
    return new Planned(labelled.withMargins(audit.margins()), audit);
  }
}
