package skidway.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.audit.WaveAudit;
import skidway.job.History;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.job.PlanFiles;
import skidway.job.SavedWaves;
import skidway.job.WaveFiles;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.WavePlan;

/**
 * A job and the plan of it that a command is about: the one named, or else the newest.
 *
 * @param task the question that the plan answers: the whole job, or what was left of it then
 */
record ChosenPlan(Job job, Path file, Plan plan, Task task) {

  static ChosenPlan of(Screen screen, Path folder, @Nullable Path named) {
    Job job = JobReader.read(folder);
    Path file =
        named != null
            ? named
            : PlanFiles.newest(job.folder()).orElseThrow(() -> BadUsage.noPlan(folder));
    Plan plan = PlanFiles.read(file, job.task());
    screen.say("%s, plan %s", job.task().jobName(), file.getFileName());
    if (!plan.inputs().equals(job.fingerprint())) {
      screen.say("The job's files have changed since %s was planned.", file.getFileName());
    }
    Task task = plan.events() == 0 ? job.task() : History.of(job).taskOf(plan);
    return new ChosenPlan(job, file, plan, task);
  }

  /**
   * The waves that lie beside the plan, if any.
   *
   * @throws skidway.job.BadInput if they are not waves of this plan
   */
  Optional<WavePlan> waves(Screen screen) {
    Optional<SavedWaves> saved = WaveFiles.read(file, plan);
    saved.ifPresent(
        waves -> {
          screen.say("With its waves, %s", waves.file().getFileName());
          waves.remarks().forEach(remark -> screen.say("%s", remark.text()));
        });
    return saved.map(SavedWaves::waves);
  }

  /** The audit of the plan, and of its waves where it has any. */
  AuditReport audit(Optional<WavePlan> waves) {
    AuditReport alone = Audit.of(task, plan);
    return waves.map(w -> new WaveAudit(task, plan).with(alone, w)).orElse(alone);
  }

  /** What files that are made from the plan are called by. */
  String stem() {
    return PlanFiles.stem(file);
  }
}
