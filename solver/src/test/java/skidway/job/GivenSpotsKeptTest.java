package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.audit.Audit;
import skidway.audit.Finding;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Spot;
import skidway.testkit.PlanBuilder;

/** Spots that the site gives in feet and pounds are the same spots after a trip through a file. */
final class GivenSpotsKeptTest {
  private static final String GIVEN = "\"spots\": [";
  private static final int SPOTS = 12;

  @TempDir Path temp;

  @RepeatedTest(6)
  void whateverTheirSizesAndLimits(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    List<String> spots = new ArrayList<>();
    for (int i = 0; i < SPOTS; i++) {
      spots.add(randomSpot("G" + i, random));
    }
    assertKept(String.join(",\n", spots));
  }

  @Test
  void withAMassLimitOfTwoThousandPounds() {
    assertKept(spot("G1", 40, 30, 15, 16, 3, 3, ", \"massLimit\": \"2000 lb\""));
  }

  @Test
  void butNotWithAnotherMassLimit() {
    Task task = read(spot("G1", 40, 30, 15, 16, 3, 3, ", \"massLimit\": \"2000 lb\""));
    Spot given = task.site().spots().get(0);
    Plan plan = PlanBuilder.aPlan().stack(given, "B01").unplaced("B02").build(task);
    Task other = read(spot("G1", 40, 30, 15, 16, 3, 3, ", \"massLimit\": \"2000.05 lb\""));
    assertThat(known(other, plan)).contains("Spot G1 differs from the one given on the site.");
  }

  private void assertKept(String spots) {
    Task task = read(spots);
    PlanBuilder plan = PlanBuilder.aPlan().unplaced("B02");
    for (Spot spot : task.site().spots()) {
      plan.stack(spot, "B01");
    }
    Path file = PlanFiles.write(temp, plan.build(task));
    assertThat(known(task, PlanFiles.read(file, task))).isEmpty();
  }

  private Task read(String spots) {
    JobFolder folder = JobFolder.in(temp).replace("site.json", GIVEN, GIVEN + spots + ",\n");
    return JobReader.read(folder.path()).task();
  }

  private static List<String> known(Task task, Plan plan) {
    return Audit.of(task, plan).findings().stream()
        .filter(f -> f.rule() == Rule.KNOWN)
        .map(Finding::sentence)
        .toList();
  }

  private static String randomSpot(String id, Random random) {
    String limit =
        random.nextInt(5) == 0
            ? ""
            : String.format(
                Locale.ROOT, ", \"massLimit\": \"%.3f lb\"", 3 + random.nextDouble() * 2e4);
    return spot(
        id,
        random.nextDouble() * 120,
        random.nextDouble() * 80,
        random.nextDouble() * 720 - 360,
        1 + random.nextDouble() * 30,
        1 + random.nextDouble() * 5,
        1 + random.nextDouble() * 5,
        limit);
  }

  private static String spot(
      String id,
      double x,
      double y,
      double heading,
      double length,
      double width,
      double strip,
      String limit) {
    return String.format(
        Locale.ROOT,
        "{\"id\": \"%s\", \"zone\": \"yard\", \"kind\": \"stack\", \"centre\": [%.6f, %.6f], \"heading\": %.6f,"
            + " \"length\": %.6f, \"width\": %.6f, \"openSide\": \"left\", \"strip\": %.6f%s}",
        id,
        x,
        y,
        heading,
        length,
        width,
        strip,
        limit);
  }
}
