package skidway.cli;

import java.nio.file.Path;
import skidway.plan.Task;

/** Refuses what is not planned yet for a site without a machine. */
final class ByHand {
  private ByHand() {}

  /**
   * @param command that is asked for
   * @param otherwise what to do if no machine comes
   * @throws BadUsage on a site without a machine
   */
  static void refuse(Task task, String command, Path folder, String otherwise) {
    if (task.site().byHand()) {
      throw new BadUsage(
          "'"
              + command
              + "' plans only for a site where a machine unloads; "
              + folder.resolve("site.json")
              + " names none. Way out: add \"machine\" if one comes; else "
              + otherwise
              + ".");
    }
  }

  /** The plan that was made is gone on by. */
  static String goOn(Path folder) {
    return "go on by the plan as it stands ('print "
        + folder
        + "'), and 'status "
        + folder
        + "' tells what is recorded";
  }
}
