package skidway.job;

import java.nio.file.Path;
import java.util.List;
import skidway.plan.WavePlan;

/**
 * Waves as they were read from beside their plan.
 *
 * @param remarks on what stands in the file and is not read
 */
public record SavedWaves(Path file, WavePlan waves, List<Problem> remarks) {
  public SavedWaves {
    remarks = List.copyOf(remarks);
  }
}
