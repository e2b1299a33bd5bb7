package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import skidway.audit.Audit;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.testkit.PlanBuilder;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;
import skidway.timber.Bundle;
import skidway.timber.Piece;

class StackSignsTest {
  private static final Task TASK =
      Tasks.task(
          SiteBuilder.aSite().build(),
          aBundle("low").load("L1", 1).piece("W2", 7, 1, 3).piece("W1", 4, 1, 3).build(),
          aBundle("high").load("L1", 2).piece("W1", 2, 1, 3).piece("W1", 1, 1, 3).build(),
          aBundle("short").load("L1", 3).piece("W3", 1, 1, 1).build(),
          aBundle("tall").load("L1", 4).piece("W3", 2, 1, 1).build());

  private static final Plan PLAN =
      PlanBuilder.aPlan()
          .stack(spot("Y1", "yard", 10, 9, 4, 0.6), "low", "high")
          .stack(rack("YR1", "yard", 20, 9, 4, 0.6), "short", "tall")
          .stack(spot("Y9", "yard", 25, 9, 2, 0.6))
          .build(TASK);

  private static List<String> signs(Task task, Plan plan) throws Exception {
    String page = Packet.html(task, plan, "a1b2c3d4e5f60718", Audit.of(task, plan));
    return SvgText.elements(SvgText.parse(page.substring(page.indexOf("<html"))), "article")
        .stream()
        .filter(e -> e.getAttribute("class").startsWith("stack-sign"))
        .map(Element::getTextContent)
        .toList();
  }

  @Test
  void aSignTellsItsStackFromTheTopAndWhatIsTakenFirst() throws Exception {
    String sign = signs(TASK, PLAN).get(0);
    assertThat(sign)
        .startsWith("Y1")
        .containsSubsequence(
            "tier 2high",
            "Wall W1; courses 1, 2",
            "Take first: W1-C1-1, W1-C2-1",
            "tier 1low",
            "Walls W1, W2; courses 4, 7",
            "Take first: W1-C4-1, W2-C7-1")
        .contains("whole stack, at most", "take from the", "north", "/ 70.0 kPa")
        .contains("Take nothing from below", "Bands are under tension")
        .contains("test job, revision 1, plan a1b2c3d4e5");
  }

  @Test
  void theBearersAreThoseOfTheStepThatBringsTheLowestTier() throws Exception {
    String bearers =
        String.join(", ", StepRow.bearers(PLAN.steps().get(0).bearers(), false, TASK.figures()));
    assertThat(signs(TASK, PLAN).get(0)).contains("Bearers under it: " + bearers);
  }

  @Test
  void aRackHasNoTiersAndAnEmptySpotNoSign() throws Exception {
    List<String> signs = signs(TASK, PLAN);
    assertThat(signs).hasSize(2);
    assertThat(signs.get(1)).contains("on endshort", "on endtall", "on the rack's rails");
    assertThat(signs.get(1)).doesNotContain("tier ").doesNotContain("Sheet ");
  }

  @Test
  void everyStackOfAPlanHasItsSign() throws Exception {
    List<String> signs = signs(SampleHouse.task(), SampleHouse.plan());
    assertThat(signs).hasSameSizeAs(SampleHouse.plan().stacks());
    assertThat(signs(UglySite.task(3), UglySite.plan(3))).hasSize(3);
  }

  @Test
  void aStackOfManyTiersHasSeveralSheetsWithItsCodeOnEach() throws Exception {
    Task task = UglySite.task("hall", 17);
    List<String> ids = task.delivery().bundles().stream().map(Bundle::id).toList();
    Plan plan =
        PlanBuilder.aPlan()
            .stack(spot("Y1", "yard", 10, 9, 4, 0.6), ids.toArray(String[]::new))
            .build(task);
    List<String> sheets = signs(task, plan);
    assertThat(sheets).hasSize(3).allMatch(sheet -> sheet.startsWith("Y1"));
    assertThat(sheets.get(0)).contains("Sheet 1 of 3, tiers 17 to 13", "tier 17" + ids.get(16));
    assertThat(sheets.get(2)).contains("Sheet 3 of 3, tiers 6 to 1", "tier 1" + ids.get(0));
    assertThat(sheets).allMatch(sheet -> sheet.contains("Take nothing from below"));
  }

  @Test
  void coursesInARunAreToldByTheirEnds() {
    assertThat(InsideWords.of(pieces(1, 2, 3, 5, 7, 8))).endsWith("; courses 1 to 3, 5, 7, 8");
    assertThat(InsideWords.of(pieces(4))).isEqualTo("Wall W1; course 4");
    assertThat(InsideWords.of(List.of())).isEqualTo("no piece listed");
  }

  private static List<Piece> pieces(int... courses) {
    var bundle = aBundle("B");
    for (int course : courses) {
      bundle.piece("W1", course, 1, 2);
    }
    return bundle.build().pieces();
  }
}
