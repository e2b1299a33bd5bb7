package skidway.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says how a job stands. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "status",
    description = {
      "Says how the job stands by what was recorded.",
      "Which loads are here, where every bundle lies, what is missing or damaged, and "
          + "how far each wall is built. Returns 1 when a recorded event does not fit the "
          + "job's files any more."
    })
final class StatusCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(
      names = "--csv",
      description = "one row a load, bundle, piece and wall, as comma-separated values")
  private boolean csv;

  StatusCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    return tell(screen, folder, csv);
  }

  static int tell(Screen screen, Path folder, boolean csv) {
    Standing standing = Standing.of(screen, folder);
    screen.results(csv ? StatusCsv.lines(standing) : StatusText.lines(standing));
    return code(standing);
  }

  static int code(Standing standing) {
    return standing.progress().contradictions().isEmpty() ? ExitCode.FINE : ExitCode.BROKEN_RULE;
  }
}
