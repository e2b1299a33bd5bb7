package skidway.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;

/** Writes the demo jobs and takes one of them all the way. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "demo",
    description = {
      "Writes the demo jobs and takes the L-shaped house all the way from check to print.",
      "Files that are there already are left alone."
    })
final class DemoCommand implements Callable<Integer> {
  private final Screen screen;
  private final StopButton stop;

  @Parameters(paramLabel = "DIR", description = "where the job folders go")
  private Path dir = Path.of("");

  @Mixin private SearchOptions search = new SearchOptions();

  DemoCommand(Screen screen, StopButton stop) {
    this.screen = screen;
    this.stop = stop;
  }

  @Override
  public Integer call() {
    SearchLimits limits = search.limits();
    List<Path> folders = DemoJobs.writeUnder(dir);
    folders.forEach(folder -> screen.say("Demo job in %s", folder));
    Path house = dir.resolve(DemoJobs.L_HOUSE);
    int check = CheckCommand.check(screen, house);
    screen.result("");
    int stage = StageCommand.stage(screen, stop, house, limits);
    stop.disarm();
    screen.result("");
    int audit = AuditCommand.audit(screen, house);
    screen.result("");
    int print = PrintCommand.print(screen, house);
    return Math.max(Math.max(check, stage), Math.max(audit, print));
  }
}
