package skidway.job;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import skidway.units.UnitSystem;

/** Begins a job: writes the least that {@code job.json} must say. */
public final class NewJob {
  private NewJob() {}

  /**
   * Writes {@code job.json} into a folder that has none.
   *
   * @return the file; empty if there is one already, which is left alone
   * @throws NotWritten if the disk refuses
   */
  public static Optional<Path> begin(Path folder, String name, UnitSystem units) {
    Path file = folder.resolve(JobHead.FILE);
    if (Files.exists(file)) {
      return Optional.empty();
    }
    String text =
        "{\n  \"format\": "
            + Format.CURRENT
            + ",\n  \"name\": \""
            + new String(JsonStringEncoder.getInstance().quoteAsString(name))
            + "\",\n  \"units\": \""
            + units.name().toLowerCase(Locale.ROOT)
            + "\",\n  \"settings\": {}\n}\n";
    try {
      AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new NotWritten(
          file,
          "it cannot be written (" + e + ")",
          "look whether the folder may be written to and has room",
          e);
    }
    return Optional.of(file);
  }
}
