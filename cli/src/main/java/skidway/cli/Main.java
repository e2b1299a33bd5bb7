package skidway.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.ZoneId;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import skidway.job.BadInput;
import skidway.job.NotWritten;
import skidway.staging.StopButton;

/** Skidway on the command line. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "skidway",
    description = {
      "Plans where the bundles of a timber package go: which spot, which tier, in which order off"
          + " the truck, so that pieces lie near their wall and nothing is overloaded or in the way."
    },
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Exit codes: 0 fine; 1 done, but a rule is broken or a bundle has no spot; 2 bad usage or"
          + " input, nothing written; 3 a fault of ours. Of read-tag: 1 the tag is outdated; 2 it is"
          + " no tag of the job."
    },
    sortOptions = false)
public final class Main {
  private Main() {}

  /** The only place that ends the program. */
  public static void main(String[] args) {
    Interrupt interrupt = new Interrupt();
    interrupt.listen();
    PrintWriter out = writer(FileDescriptor.out);
    PrintWriter err = writer(FileDescriptor.err);
    Screen screen = new Screen(out, err, watched());
    int code = run(screen, interrupt.stopButton(), args);
    interrupt.finished(code);
    System.exit(code);
  }

  /** Runs one command and returns its exit code; everything it says is flushed. */
  static int run(Screen screen, StopButton stop, String... args) {
    return run(screen, stop, Clock.system(ZoneId.systemDefault()), args);
  }

  /** The same by another clock; otherwise the site is where the computer is. */
  static int run(Screen screen, StopButton stop, Clock clock, String... args) {
    CommandLine line = new CommandLine(new Main());
    new Commands(screen, stop, clock).addTo(line, args);
    line.setOut(screen.results())
        .setErr(screen.talk())
        .setExecutionExceptionHandler((e, command, parsed) -> explain(screen, e));
    int code = args.length == 0 ? usage(line, screen) : executed(line, screen, args);
    screen.results().flush();
    screen.talk().flush();
    return code;
  }

  private static int executed(CommandLine line, Screen screen, String... args) {
    try {
      return line.execute(args);
    } catch (OutOfMemoryError e) {
      long mostMb = Runtime.getRuntime().maxMemory() >> 20;
      screen.say("The job needs more memory than the %d MB Java may take here.", mostMb);
      screen.say("Way out: java -Xmx2g -jar skidway.jar ..., or print less at once, see --only.");
      return ExitCode.BAD_INPUT;
    }
  }

  private static int usage(CommandLine line, Screen screen) {
    line.usage(screen.talk());
    return ExitCode.BAD_INPUT;
  }

  private static int explain(Screen screen, Exception fault) {
    if (fault instanceof BadInput bad) {
      bad.problems().forEach(problem -> screen.say("%s", problem.picture()));
      int count = bad.problems().size() + bad.more();
      if (bad.more() > 0) {
        screen.say("... and %d more.", bad.more());
      }
      screen.say("%d %s; nothing was written.", count, count == 1 ? "problem" : "problems");
      return ExitCode.BAD_INPUT;
    }
    if (fault instanceof NotWritten || fault instanceof BadUsage) {
      screen.say("%s", fault.getMessage());
      return ExitCode.BAD_INPUT;
    }
    screen.say("Skidway failed; this is a fault of the program, not of the job. Please report it:");
    fault.printStackTrace(screen.talk());
    return ExitCode.FAULT;
  }

  /**
   * Whether a person watches. Later Javas may say yes to a pipe; then a line is drawn too often.
   */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean watched() {
    return System.console() != null;
  }

  private static PrintWriter writer(FileDescriptor to) {
    return new PrintWriter(new FileOutputStream(to), false, StandardCharsets.UTF_8);
  }
}
