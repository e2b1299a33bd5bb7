package skidway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;

/**
 * Something happens, and the rest is planned anew: the new plan must stand the audit and never take
 * longer than changing nothing, nor than planning as if nothing lay there, moves counted.
 */
class DisruptionsTest {
  @ParameterizedTest
  @CsvSource({"cabin, 1", "cabin, 2", "l-house, 4"})
  void theRestIsPlannedNoWorseThanByChangingNothing(String demo, long seed) {
    Job job = job(demo);
    assertThat(Replanned.after(job, first(job, 4000), seed, 4000).faults()).isEmpty();
  }

  /** What lies stays where it lies, so all that can be planned is where the next truck's goes. */
  @ParameterizedTest
  @ValueSource(longs = {6, 7, 21, 25})
  void onASiteWithoutAMachineTheRestIsPlannedNoWorseEither(long seed, @TempDir Path folder)
      throws IOException {
    Job job = byHand(folder);
    Replanned replanned = Replanned.after(job, first(job, 500), seed, 500);
    assertThat(replanned.faults()).isEmpty();
    assertThat(replanned.plan().steps()).extracting(Step::kind).allMatch(StepKind.PLACE::equals);
  }

  /** Where stacks must be built, few places are left to wait at. */
  @Test
  void onATinyYardTheRestIsPlannedNoWorseEither(@TempDir Path folder) throws IOException {
    Job job = tinyYard(folder);
    assertThat(Replanned.after(job, first(job, 2000), 5, 2000).faults()).isEmpty();
  }

  /**
   * Many disruptions each, 20 or {@code -Dskidway.disruptions}, searched with 100,000 calculations
   * or {@code -Dskidway.effort}; prints what they cost, at last as a table.
   */
  @Test
  @Tag("long")
  void manyDisruptions(@TempDir Path folder) throws IOException {
    long effort = Long.getLong("skidway.effort", 100_000);
    List<Replanned> all = new ArrayList<>();
    for (Job job : List.of(job("cabin"), tinyYard(folder), job("l-house"))) {
      Plan plan = first(job, effort);
      for (long seed = 1; seed <= Long.getLong("skidway.disruptions", 20); seed++) {
        Replanned replanned = Replanned.after(job, plan, seed, effort);
        System.out.println(replanned.line());
        replanned.faults().forEach(System.out::println);
        all.add(replanned);
      }
    }
    DisruptionTable.of(all).forEach(System.out::println);
    assertThat(all.stream().flatMap(r -> r.faults().stream())).isEmpty();
  }

  /** The cabin with a third of its yard. */
  private static Job tinyYard(Path folder) throws IOException {
    cabin(
        folder,
        "\\[\\[4, 4\\], \\[25, 4\\], \\[25, 10.4\\], \\[4, 10.4\\]\\]",
        "[[8.5, 7], [19, 7], [19, 10.4], [8.5, 10.4]]");
    String job = Files.readString(folder.resolve("job.json"));
    Files.writeString(folder.resolve("job.json"), job.replace("Fernhollow", "Narrow Fernhollow"));
    return JobReader.read(folder);
  }

  private static Job byHand(Path folder) throws IOException {
    cabin(folder, "(?s)\"machine\": \\{.*\\},\\s*\"spots\"", "\"spots\"");
    Job job = JobReader.read(folder);
    assertThat(job.task().site().byHand()).isTrue();
    return job;
  }

  /** The cabin with something else in its site. */
  private static void cabin(Path folder, String instead, String with) throws IOException {
    Path cabin = Path.of("..", "demo-data", "cabin");
    for (String name : List.of("job.json", "pieces.csv", "bundles.csv", "loads.csv")) {
      Files.copy(cabin.resolve(name), folder.resolve(name));
    }
    String site = Files.readString(cabin.resolve("site.json"));
    String other = site.replaceFirst(instead, with);
    assertThat(other).isNotEqualTo(site);
    Files.writeString(folder.resolve("site.json"), other);
  }

  private static Job job(String demo) {
    return JobReader.read(Path.of("..", "demo-data", demo));
  }

  private static Plan first(Job job, long calculations) {
    return Planner.plan(job, new SearchLimits(1, calculations), (p, d, s) -> {}, new StopButton())
        .plan();
  }
}
