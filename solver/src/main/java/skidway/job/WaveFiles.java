package skidway.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import skidway.plan.WavePlan;

/** Writes the waves of a plan beside it: {@code plans/001-waves.json} for {@code 001.json}. */
public final class WaveFiles {
  private WaveFiles() {}

  /**
   * Writes waves, in place of older ones of the same plan.
   *
   * @return the file written
   * @throws NotWritten if another writer is at work or the disk refuses
   */
  public static Path write(Path folder, WavePlan waves) {
    Path plans = PlanFiles.plans(folder);
    try {
      Files.createDirectories(plans);
      try (WriteLock lock = WriteLock.of(plans)) {
        Path file = plans.resolve(String.format(Locale.ROOT, "%03d-waves.json", waves.revision()));
        lock.replace(file, WaveText.of(waves).getBytes(StandardCharsets.UTF_8));
        return file;
      }
    } catch (IOException e) {
      throw new NotWritten(
          plans,
          "it cannot be written to (" + e + ")",
          "look whether it is a folder, may be written to and has room",
          e);
    }
  }
}
