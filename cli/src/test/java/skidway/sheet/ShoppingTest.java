package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.job.JobReader;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Footprint;
import skidway.timber.Bundle;

class ShoppingTest {
  private static final Task TASK = SampleHouse.task();
  private static final Plan PLAN = SampleHouse.plan();

  @Test
  void everyBearerOfEveryStepIsCounted() {
    Shopping shopping = Shopping.of(TASK, PLAN);
    int laid = PLAN.steps().stream().mapToInt(s -> s.bearers().count()).sum();
    assertThat(shopping.bearers().stream().mapToInt(Shopping.Cut::together).sum()).isEqualTo(laid);
    assertThat(shopping.bearers())
        .extracting(Shopping.Cut::length)
        .containsExactly("3'-0\"", "2'-6\"");
    // Only B13 waits; it is 12 ft long and 3 ft wide: 10 ft between its end bearers, so 4 of them.
    assertThat(shopping.bearers()).extracting(Shopping.Cut::waiting).containsExactly(4, 0);
  }

  @Test
  void aBundleThatWaitsNeedsBearersTwice() {
    int steps =
        PLAN.steps().stream()
            .filter(s -> s.bundleId().equals("B13"))
            .mapToInt(s -> s.bearers().count())
            .sum();
    assertThat(steps).isEqualTo(8);
  }

  @Test
  void eachRackHasTwoRailsUnderItTwoToLeanAgainstAndTheirTies() {
    Shopping shopping = Shopping.of(TASK, PLAN);
    assertThat(shopping.rails()).hasSize(1);
    assertThat(shopping.rails().get(0).length()).isEqualTo("8'-0\"");
    assertThat(shopping.rails().get(0).together()).isEqualTo(4);
    assertThat(shopping.others().get(0)).endsWith(": 4 for " + shopping.racks().get(0));
  }

  @Test
  void eachStackHasACoverThatGoesBeyondItsEndsAndSides() {
    Task wide =
        new Task(
            TASK.jobName(),
            TASK.site(),
            TASK.delivery(),
            TASK.settings()
                .with(Setting.COVER_ENDS, 3 * 0.3048, "long eaves")
                .with(Setting.COVER_SIDES, 0.3048, "wide eaves"),
            TASK.figures());
    StackView stack =
        StackView.of(TASK, PLAN).stream().filter(s -> !s.rack()).findFirst().orElseThrow();
    Footprint area = stack.spot().footprint();
    String size =
        TASK.figures().length(area.lengthM() + 6 * 0.3048)
            + " by "
            + TASK.figures().length(area.widthM() + 2 * 0.3048);
    assertThat(Shopping.of(wide, PLAN).covers().get(size)).contains(stack.spot().id());
    long stacks = StackView.of(TASK, PLAN).stream().filter(s -> !s.rack()).count();
    assertThat(Shopping.of(TASK, PLAN).covers().values().stream().mapToInt(List::size).sum())
        .isEqualTo((int) stacks);
  }

  @Test
  void onlyTimbersThatStillDryNeedStickers() {
    Path demos = Path.of("..", "demo-data");
    // All timbers of the cabin are at 22 percent, those of the other house at the limit of 19.
    Task damp = JobReader.read(demos.resolve("cabin")).task();
    assertThat(Shopping.of(damp, PLAN).damp())
        .containsExactlyElementsOf(damp.delivery().bundles().stream().map(Bundle::id).toList());
    Task seasoned = JobReader.read(demos.resolve("l-house")).task();
    assertThat(Shopping.of(seasoned, PLAN).damp()).isEmpty();
  }

  @Test
  void onlyStacksAboveTheHeightNeedSupports() {
    assertThat(Shopping.of(TASK, PLAN).braced()).containsExactly("A1", "A3", "A4");
    double threeTiersM = 3 * (1.1 * 0.3048 + TASK.settings().get(Setting.BEARER_HEIGHT));
    Task atLimit =
        new Task(
            TASK.jobName(),
            TASK.site(),
            TASK.delivery(),
            TASK.settings().with(Setting.WEDGE_HEIGHT, threeTiersM, "at the limit"),
            TASK.figures());
    assertThat(Shopping.of(atLimit, PLAN).braced()).containsExactly("A3");
  }

  @Test
  void theListIsAFewLinesOfText() {
    List<String> lines = Shopping.of(TASK, PLAN).lines();
    assertThat(lines).hasSizeGreaterThan(3);
    assertThat(lines.get(0))
        .matches(
            "bearers, 3 1/2\" wide, 3 1/2\" high \\(assumed\\): \\d+ of 3'-0\", \\d+ of 2'-6\"");
    assertThat(lines.get(1)).endsWith(": 4 of 8'-0\"");
    assertThat(lines.get(lines.size() - 1)).endsWith("higher than 3'-11\": A1, A3, A4");
  }

  @Test
  void theSheetShowsWhatIsAssumed() {
    assertThat(Packet.html(TASK, PLAN, "f", SampleAudit.nothing()))
        .contains("<h2>To have on site</h2>", "rails of racks", "Counted as sound timber")
        .contains("a set for each stack higher than 3&#39;-11&quot;: A1, A3, A4.");
  }
}
