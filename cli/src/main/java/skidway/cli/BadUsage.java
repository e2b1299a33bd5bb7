package skidway.cli;

import java.nio.file.Path;

/** Says what is wrong with what was asked for, and what to ask for instead. */
final class BadUsage extends RuntimeException {
  BadUsage(String message) {
    super(message);
  }

  /** A job that nobody has staged yet. */
  static BadUsage noPlan(Path folder) {
    return new BadUsage(folder + " has no plan yet. Way out: run 'stage " + folder + "' first.");
  }

  /** A plan that has no waves, where they are asked for. */
  static BadUsage noWaves(Path plan, Path folder) {
    return new BadUsage(
        "No waves are planned beside " + plan + ". Way out: run 'waves " + folder + "' first.");
  }
}
