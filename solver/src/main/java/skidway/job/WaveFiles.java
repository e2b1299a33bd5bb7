package skidway.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import skidway.plan.Plan;
import skidway.plan.WavePlan;

/**
 * Reads and writes the waves of a plan beside it: {@code plans/001-waves.json} for {@code
 * 001.json}.
 */
public final class WaveFiles {
  private WaveFiles() {}

  /** The file beside a plan that its waves are in, whether it is there or not. */
  public static Path beside(Path planFile) {
    return planFile.resolveSibling(PlanFiles.stem(planFile) + "-waves.json");
  }

  /**
   * Reads the waves of a plan, if any lie beside it.
   *
   * @throws BadInput if the file is none of waves, or they are of another revision or of a plan
   *     that was changed since; whether the waves are any good is not judged
   */
  public static Optional<SavedWaves> read(Path planFile, Plan plan) {
    Path file = beside(planFile);
    return Files.exists(file)
        ? Optional.of(read(file, plan, PlanMark.of(plan, planFile)))
        : Optional.empty();
  }

  private static SavedWaves read(Path file, Plan plan, PlanMark mark) {
    Problems problems = new Problems();
    String name = String.valueOf(file.getFileName());
    Optional<WavePlan> waves =
        PlanFiles.fields(file, "waves", "waves are files such as plans/001-waves.json", problems)
            .flatMap(fields -> new WaveReader(problems, plan, mark).waves(fields));
    problems.throwIfAny(List.of(name));
    return new SavedWaves(file, waves.orElseThrow(), problems.remarks(List.of(name)));
  }

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
      throw PlanFiles.refused(plans, e);
    }
  }
}
