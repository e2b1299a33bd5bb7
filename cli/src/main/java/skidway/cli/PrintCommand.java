package skidway.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.job.OutFiles;
import skidway.job.PlanFiles;
import skidway.sheet.Packet;

/** Writes the map and the unloading sheet. */
@Command(
    name = "print",
    description = {
      "Writes the stack map and the unloading sheet of the newest plan, or of the one named, as one",
      "page into the job's out folder. The page needs no network and opens on a phone."
    })
final class PrintCommand implements Callable<Integer> {
  private final Screen screen;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(names = "--plan", paramLabel = "FILE", description = "the plan to print")
  private @Nullable Path file;

  PrintCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    return print(screen, folder, file);
  }

  static int print(Screen screen, Path folder, @Nullable Path file) {
    ChosenPlan chosen = ChosenPlan.of(screen, folder, file);
    String page =
        Packet.html(chosen.job().task(), chosen.plan(), PlanFiles.fingerprint(chosen.file()));
    String name = String.format(Locale.ROOT, "packet-%03d.html", chosen.plan().revision());
    Path written = OutFiles.write(chosen.job().folder(), name, page);
    screen.result("Map and unloading sheet: %s", written);
    return ExitCode.FINE;
  }
}
