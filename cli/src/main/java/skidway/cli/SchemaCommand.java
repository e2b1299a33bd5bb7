package skidway.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import skidway.job.Schemas;

/** Prints the published form of a file. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "schema",
    description = {
      "Prints the form of a JSON file of a job as JSON Schema (draft 2020-12).",
      "For editors and for programs that write such files."
    })
final class SchemaCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(paramLabel = "FILE", description = "job, site, plan, waves or imports")
  private String name = "";

  SchemaCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    if (!Schemas.NAMES.contains(name)) {
      throw new BadUsage(
          "There is no schema of \""
              + name
              + "\"; there is one of "
              + String.join(", ", Schemas.NAMES)
              + ".");
    }
    screen.results().print(Schemas.of(name));
    return ExitCode.FINE;
  }
}
