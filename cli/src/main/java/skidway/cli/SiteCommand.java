package skidway.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import skidway.job.NewJob;
import skidway.job.OutFiles;
import skidway.plan.Task;
import skidway.sheet.Paper;
import skidway.sheet.SitePage;
import skidway.sheet.StackMap;
import skidway.survey.SiteSurvey;

/** Makes a site out of words and tape measures. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "site",
    description = {
      "Reads house and site as somebody tells them, and draws them.",
      "Wall by wall and by distances from walls: closes the walls as surveyors do, "
          + "writes site.json and draws it (out/site.html, out/site.svg). What was added to "
          + "site.json by hand is kept."
    })
final class SiteCommand implements Callable<Integer> {
  /** Not closed: it is not ours. */
  private static final BufferedReader ANSWERS =
      new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));

  private final Screen screen;

  @Parameters(index = "0", paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "FILE",
      description = "the description; site.txt in the job's folder unless it is named")
  private @Nullable Path file;

  @Option(names = "--replace", description = "give up what was added to site.json by hand")
  private boolean replace;

  @Option(
      names = "--ask",
      description = "ask for everything in turn, and write the answers into the description")
  private boolean ask;

  SiteCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    Path description = file == null ? folder.resolve(SiteSurvey.FILE) : file;
    if (ask && !new Asking(screen, ANSWERS).ask(folder, description)) {
      return ExitCode.BAD_INPUT; // nobody answered to the end, and nothing else was written
    }
    SiteSurvey survey = SiteSurvey.read(folder, description, replace);
    survey.remarks().forEach(remark -> screen.say("%s", remark.text()));
    survey.notes().forEach(note -> screen.result("%s", note));
    survey.checks().forEach(check -> screen.result("Tape to check: %s", check));
    screen.result("Site: %s", survey.write());
    Task task = survey.task();
    Optional<Path> begun = NewJob.begin(folder, task.jobName(), task.figures().units());
    begun.ifPresent(job -> screen.result("Job with nothing but its name and units: %s", job));
    String map = StackMap.siteOnly(survey.task(), Paper.LYING).svg();
    screen.result("Map alone: %s", OutFiles.write(folder, "site.svg", map));
    String page = SitePage.html(survey.task(), survey.notes(), survey.checks());
    screen.result("Site with its measures: %s", OutFiles.write(folder, "site.html", page));
    if (begun.isPresent()) {
      screen.result(
          "Tape the site before relying on it; then: skidway import %s LIST --load L1 --arrival"
              + " TIME",
          folder);
    }
    screen.caution();
    return ExitCode.FINE;
  }
}
