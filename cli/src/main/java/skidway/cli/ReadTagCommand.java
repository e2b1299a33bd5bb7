package skidway.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells whether a tag still holds. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    name = "read-tag",
    description = {
      "Tells whether a bundle's tag is of the newest plan, and where the bundle lies " + "in it.",
      "Give it what a phone shows for the tag's code, in one text, in a file, or on "
          + "standard input. Returns 0 when the tag holds, 1 when it is outdated or the "
          + "bundle lies elsewhere, 2 when it is no tag of this job."
    })
final class ReadTagCommand implements Callable<Integer> {
  /** Far more than a tag holds. */
  private static final int MOST_BYTES = 4096;

  private final Screen screen;

  @Parameters(index = "0", paramLabel = "JOB", description = "the job's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", arity = "0..1", paramLabel = "TEXT", description = "the tag's text")
  private @Nullable String text;

  @Option(names = "--file", paramLabel = "FILE", description = "a file with the tag's text")
  private @Nullable Path file;

  ReadTagCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    if (text != null && file != null) {
      throw new BadUsage("Give the tag's text or --file, not both.");
    }
    String tag = text != null ? text : fromStream();
    TagAnswer answer = new TagQuestion(ChosenPlan.of(screen, folder, null)).ask(tag);
    answer.lines().forEach(line -> screen.result("%s", line));
    return answer.code();
  }

  private String fromStream() {
    try (InputStream in = file == null ? System.in : Files.newInputStream(file)) {
      return new String(in.readNBytes(MOST_BYTES), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new BadUsage("The tag's text cannot be read (" + e + ").");
    }
  }
}
