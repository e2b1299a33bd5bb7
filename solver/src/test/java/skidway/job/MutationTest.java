package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.progress.Event;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;

/** Whatever a file is changed into, it is read or refused with problems: nothing else comes out. */
final class MutationTest {
  @TempDir Path temp;

  /** Of the five files that a job is read from, a fifth of the inputs each. */
  @Test
  void ofAJob() throws IOException {
    List<Spoiling.Share> shares = new ArrayList<>();
    for (String file : JobReader.FILES) {
      shares.add(share(file));
    }
    Spoiling.atOnce(shares);
  }

  @Tag("long")
  @ParameterizedTest
  @ValueSource(strings = {"job.json", "site.json", "pieces.csv", "bundles.csv", "loads.csv"})
  void ofAFileOfAJob(String file) throws IOException {
    Spoiling.atOnce(List.of(share(file)));
  }

  /** A job of which one file is spoilt anew each time. */
  private Spoiling.Share share(String file) throws IOException {
    JobFolder folder = JobFolder.full(Files.createDirectory(temp.resolve("with a spoilt " + file)));
    return new Spoiling.Share(
        file,
        random -> Mutator.mutated(folder.text(file), random),
        input -> {
          folder.write(file, input);
          assertThat(JobReader.read(folder.path()).task().site().walls()).isNotEmpty();
        });
  }

  @Test
  void ofAPlan() throws IOException {
    Task task = Tasks.task(SiteBuilder.aSite().build());
    Path file = PlanFiles.write(temp, SamplePlans.exact(1));
    Spoiling.ofText(
        "plan",
        Files.readString(file),
        input -> {
          Files.write(file, input);
          assertThat(PlanFiles.read(file, task).jobName()).isNotNull();
        });
  }

  @Test
  void ofWaves() throws IOException {
    Plan plan = SamplePlans.exact(1);
    Path planFile = PlanFiles.write(temp, plan);
    Path file = WaveFiles.write(temp, SampleWaves.exact(PlanMark.of(plan, planFile)));
    Spoiling.ofText(
        "waves",
        Files.readString(file),
        input -> {
          Files.write(file, input);
          assertThat(WaveFiles.read(planFile, plan).orElseThrow().waves().waves()).isNotNull();
        });
  }

  @Test
  void ofHowListsWereRead() throws IOException {
    Path file = temp.resolve(ImportsFile.FILE);
    Spoiling.ofText(
        "imports",
        ImportsText.of(List.of(ImportsSchemaTest.LIST, ImportsSchemaTest.LIST), Optional.empty()),
        input -> {
          Files.write(file, input);
          assertThat(JobDraft.open(temp).lists()).isNotNull();
        });
  }

  /** Half of the lines carry a true check over something that 'record' never writes. */
  @Test
  void ofWhatHappened() throws IOException {
    Job job = eventfulJob();
    Path file = temp.resolve(EventsFile.NAME);
    String text = Files.readString(file);
    List<String> lines = Files.readAllLines(file);
    Spoiling.of(
        "events",
        random ->
            random.nextBoolean()
                ? Mutator.mutated(text, random)
                : sealed(lines.get(random.nextInt(lines.size())), random),
        input -> {
          Files.write(file, input);
          assertThat(EventsFile.read(job).entries()).isNotNull();
        });
  }

  private static byte[] sealed(String line, Random random) {
    String content = line.substring(0, line.lastIndexOf(",\"check\"")) + "}";
    String spoilt = new String(Mutator.mutated(content, random), StandardCharsets.UTF_8);
    String oneLine = spoilt.isEmpty() ? "{}" : spoilt.replace("\n", " ").replace("\r", " ");
    return (EventSeal.seal(oneLine, EventSeal.START) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private Job eventfulJob() throws IOException {
    Job job = new Job(temp, Tasks.task(SiteBuilder.aSite().build()), "", List.of());
    Files.createDirectories(temp.resolve("plans"));
    LocalDateTime at = LocalDateTime.of(2031, 5, 5, 8, 0);
    List<Event> events =
        List.of(
            new Event.Arrived(1, at, "Ann", "L1"),
            new Event.Placed(2, at, "Ann", "B1", "north yard", 1),
            new Event.Damaged(3, at, "Ann", "W1-C1-1", "split"),
            new Event.Late(4, at, "Ann", "L2", at.plusDays(3)),
            new Event.Pulled(5, at, "Ann", "W1-C01", List.of("W1-C1-2", "W1-C1-3")),
            new Event.Undo(6, at, "Ann", 3));
    EventsFile.append(job, new PlanMark(1, "ab12"), log -> events);
    return job;
  }
}
