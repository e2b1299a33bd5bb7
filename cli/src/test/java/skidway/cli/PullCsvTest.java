package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.plan.Task;
import skidway.testkit.BundleBuilder;
import skidway.testkit.PlanBuilder;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;
import skidway.units.Figures;
import skidway.units.UnitSystem;

class PullCsvTest {
  private static final Task TASK =
      Tasks.task(
          SiteBuilder.aSite().build(),
          BundleBuilder.aBundle("low").load("L1", 1).piece("W1", 1, 1, 3).build(),
          BundleBuilder.aBundle("high, \"dry\"").load("L1", 2).piece("W1", 2, 1, 3).build());

  private static List<List<String>> rows(Task task) {
    String text =
        PullCsv.text(
            task,
            PlanBuilder.aPlan()
                .stack(SiteBuilder.spot("Y1", "yard", 10, 9, 4, 0.6), "low", "high, \"dry\"")
                .build(task),
            List.of(),
            "f00d");
    assertThat(text).endsWith("\r\n");
    return Arrays.stream(text.split("\r\n", -1))
        .filter(line -> !line.isEmpty())
        .map(CsvLine::cells)
        .toList();
  }

  @Test
  void eachPieceIsARowAsWideAsTheHeader() {
    List<List<String>> rows = rows(TASK);
    assertThat(rows).hasSize(3);
    assertThat(rows.get(1).subList(0, 9))
        .containsExactly("1", "W1", "1", "1", "W1-C1-1", "Y1", "1", "1", "low");
    assertThat(rows.get(1)).endsWith("1", "W1-C2-1", "1", "f00d");
    assertThat(rows.get(2)).contains("high, \"dry\"").hasSameSizeAs(rows.get(0));
  }

  @Test
  void theHeaderNamesTheUnitOfTheMass() {
    double kg = TASK.delivery().pieces().get(0).mass().highKg();
    Task pounds =
        new Task(
            TASK.jobName(),
            TASK.site(),
            TASK.delivery(),
            TASK.settings(),
            new Figures(UnitSystem.US));
    assertThat(rows(TASK).get(0).get(9)).isEqualTo("mass_at_most_kg");
    assertThat(rows(TASK).get(1).get(9)).isEqualTo(Long.toString(Math.round(kg)));
    assertThat(rows(pounds).get(0).get(9)).isEqualTo("mass_at_most_lb");
    assertThat(rows(pounds).get(1).get(9)).isEqualTo(Long.toString(Math.round(kg / 0.45359237)));
  }
}
