package skidway.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import skidway.job.History;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.job.PlanFiles;
import skidway.plan.Plan;
import skidway.plan.Task;

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

  /** What files that are made from the plan are called by. */
  String stem() {
    return file.getFileName().toString().replaceFirst("\\.json$", "");
  }
}
