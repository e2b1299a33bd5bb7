package skidway.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A program to be killed: records one event after the other, or writes one revision after the
 * other, and says the number of each that the command called recorded or written.
 */
final class Endless {
  private static final Pattern WRITTEN = Pattern.compile("(\\d+)\\.json written\\.");

  private Endless() {}

  /**
   * Goes on until it is killed or the test is gone.
   *
   * @param args the job's folder, {@code record} or {@code restage}, and the next event's number
   */
  public static void main(String[] args) {
    ProcessHandle test = ProcessHandle.current().parent().orElseThrow();
    say("begins");
    for (int turn = Integer.parseInt(args[2]); test.isAlive(); turn++) {
      say(
          args[1].equals("record")
              ? "done " + recorded(args[0], turn)
              : "done " + restaged(args[0], turn));
    }
  }

  private static int recorded(String job, int seq) {
    ran("record", job, seq % 2 == 0 ? "missing" : "found", "B09", "--by", "Ann");
    return seq;
  }

  private static int restaged(String job, int seed) {
    String effort = "20"; // the smaller, the more of the time is spent on writing
    Shell shell = ran("restage", job, "--effort", effort, "--seed", Integer.toString(seed));
    Matcher matcher = WRITTEN.matcher(shell.out());
    if (!matcher.find()) {
      throw new IllegalStateException(shell.out());
    }
    return Integer.parseInt(matcher.group(1));
  }

  private static Shell ran(String... args) {
    Shell shell = Shell.run(args);
    if (shell.code() != ExitCode.FINE && shell.code() != ExitCode.BROKEN_RULE) {
      throw new IllegalStateException(shell.err());
    }
    return shell;
  }

  private static void say(String line) {
    System.out.print(line + "\n");
    System.out.flush();
  }
}
