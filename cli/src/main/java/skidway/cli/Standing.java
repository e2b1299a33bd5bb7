package skidway.cli;

import java.nio.file.Path;
import skidway.job.EventLog;
import skidway.job.EventsFile;
import skidway.job.SiteProgress;
import skidway.plan.Task;
import skidway.progress.Contradiction;
import skidway.progress.Progress;

/** How a job stands: its newest plan and what happened on site since. */
record Standing(ChosenPlan chosen, Progress progress) {

  static Standing of(Screen screen, Path folder) {
    ChosenPlan chosen = ChosenPlan.of(screen, folder, null);
    return of(screen, chosen, EventsFile.read(chosen.job()));
  }

  /** Folds events that were read already; what is odd about them is said. */
  static Standing of(Screen screen, ChosenPlan chosen, EventLog log) {
    SiteProgress site = SiteProgress.of(chosen.job(), chosen.plan(), log);
    log.remarks().forEach(remark -> screen.say("%s", remark.text()));
    site.remarks().forEach(remark -> screen.say("%s", remark));
    for (Contradiction contradiction : site.progress().contradictions()) {
      screen.say(
          "Event %d does not fit the job's files any more and does not count. %s If the files are"
              + " right as they are, undo %d.",
          contradiction.seq(), contradiction.text(), contradiction.seq());
    }
    return new Standing(chosen, site.progress());
  }

  Task task() {
    return chosen.job().task();
  }
}
