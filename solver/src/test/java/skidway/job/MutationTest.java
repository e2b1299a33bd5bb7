package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.plan.Task;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;

/** Whatever a file is changed into, it is read or refused with problems: nothing else comes out. */
final class MutationTest {
  private static final int TRIES = 2000;

  /** Takes minutes a file. */
  private static final int MANY_TRIES = 100_000;

  @TempDir Path temp;

  @ParameterizedTest
  @ValueSource(strings = {"job.json", "site.json", "pieces.csv", "bundles.csv", "loads.csv"})
  void ofAnInputFile(String file) {
    ofAnInputFile(file, TRIES);
  }

  @Tag("long")
  @ParameterizedTest
  @ValueSource(strings = {"job.json", "site.json", "pieces.csv", "bundles.csv", "loads.csv"})
  void ofAnInputFileManyTimes(String file) {
    ofAnInputFile(file, MANY_TRIES);
  }

  private void ofAnInputFile(String file, int tries) {
    JobFolder folder = JobFolder.full(temp);
    Random random = new Random(file.hashCode());
    int refused = 0;
    for (int i = 0; i < tries; i++) {
      folder.write(file, Mutator.mutated(folder.text(file), random));
      try {
        assertThat(JobReader.read(temp).task().site().walls()).isNotEmpty();
      } catch (BadInput e) {
        refused++;
        check(e);
      }
    }
    assertThat(refused).isBetween(tries / 4, tries);
  }

  @Test
  void ofAPlanFile() throws IOException {
    Task task = Tasks.task(SiteBuilder.aSite().build());
    Path file = PlanFiles.write(temp, SamplePlans.exact(1));
    String text = Files.readString(file);
    Random random = new Random(11);
    int refused = 0;
    for (int i = 0; i < TRIES; i++) {
      Files.write(file, Mutator.mutated(text, random));
      try {
        assertThat(PlanFiles.read(file, task).jobName()).isNotNull();
      } catch (BadInput e) {
        refused++;
        check(e);
      }
    }
    assertThat(refused).isBetween(TRIES / 4, TRIES);
  }

  private static void check(BadInput e) {
    assertThat(e.problems()).isNotEmpty().hasSizeLessThanOrEqualTo(Problems.SHOWN);
    for (Problem p : e.problems().subList(0, Math.min(20, e.problems().size()))) {
      assertThat(p.text()).contains(": found ").contains(". Way out: ").hasSizeLessThan(1200);
      assertThat(p.picture()).startsWith(p.text());
      assertThat(p.line()).isNotNegative();
    }
  }
}
