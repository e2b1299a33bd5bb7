package skidway.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.timber.Delivery;

/** Checks that the demo folders read back as the jobs they were written from. */
class DemoJobReadTest {

  @ParameterizedTest
  @CsvSource({"cabin, 9, 100, 1798, 1953", "l-house, 28, 265, 4796, 4387"})
  void folderReadsWithoutRemarks(
      String folder, int bundles, int pieces, double firstLoadKg, double secondLoadKg) {
    Job job = JobReader.read(Path.of("..", "demo-data", folder));
    Delivery delivery = job.task().delivery();
    assertThat(job.remarks()).isEmpty();
    assertThat(delivery.bundles()).hasSize(bundles);
    assertThat(delivery.pieces()).hasSize(pieces);
    assertThat(massKg(delivery, "L1")).isCloseTo(firstLoadKg, within(1.0));
    assertThat(massKg(delivery, "L2")).isCloseTo(secondLoadKg, within(1.0));
  }

  private static double massKg(Delivery delivery, String load) {
    return delivery.bundles().stream()
        .filter(b -> b.loadId().equals(load))
        .mapToDouble(b -> b.mass().likelyKg())
        .sum();
  }
}
