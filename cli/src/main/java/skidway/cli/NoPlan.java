package skidway.cli;

import java.nio.file.Path;

/** Says that a job has no plan yet. */
final class NoPlan extends RuntimeException {
  NoPlan(Path folder) {
    super(folder + " has no plan yet. Way out: run 'stage " + folder + "' first.");
  }
}
