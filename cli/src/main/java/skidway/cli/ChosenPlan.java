package skidway.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.job.PlanFiles;
import skidway.plan.Plan;

/** A job and the plan of it that a command is about: the one named, or else the newest. */
record ChosenPlan(Job job, Path file, Plan plan) {

  static ChosenPlan of(Screen screen, Path folder, @Nullable Path named) {
    Job job = JobReader.read(folder);
    Path file =
        named != null
            ? named
            : PlanFiles.newest(job.folder())
                .orElseThrow(
                    () ->
                        new BadUsage(
                            folder
                                + " has no plan yet. Way out: run 'stage "
                                + folder
                                + "' first."));
    Plan plan = PlanFiles.read(file, job.task());
    screen.say("%s, plan %s", job.task().jobName(), file.getFileName());
    if (!plan.inputs().equals(job.fingerprint())) {
      screen.say("The job's files have changed since %s was planned.", file.getFileName());
    }
    return new ChosenPlan(job, file, plan);
  }
}
