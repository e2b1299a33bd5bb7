package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.spot;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import skidway.audit.Audit;
import skidway.plan.PieceHours;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.testkit.PlanBuilder;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;
import skidway.timber.BearerRow;

class PileSignsTest {
  private static final Task TASK =
      Tasks.task(
          SiteBuilder.aSite().build(),
          aBundle("B1")
              .piece("W1", 1, 1, 3)
              .piece("W1", 2, 1, 3)
              .piece("W3", 2, 1, 3)
              .piece("W1", 3, 1, 3)
              .build());

  private static final Plan PLAN =
      PlanBuilder.aPlan().stack(spot("Y1", "yard", 10, 9, 4, 0.6), "B1").build(TASK);

  private static WavePlan waves(List<List<String>> layers) {
    BearerRow bearers = new BearerRow(2, 2.4, 0.3, 0.6);
    TimberPile pile =
        new TimberPile(spot("P1.1", "yard", 15, 9, 4, 0.6), layers, 0.5, 120, bearers);
    Wave wave = new Wave(1, 1, 4, 2, 3, List.of(pile), List.of(), List.of(), PieceHours.NONE);
    return new WavePlan("test job", 1, "", List.of(wave), PieceHours.NONE, PieceHours.NONE);
  }

  private static List<String> signs(WavePlan waves, Set<Part> parts) throws Exception {
    String page =
        Packet.page(
                TASK,
                PLAN,
                Optional.of(waves),
                "a1b2c3d4e5f60718",
                Audit.of(TASK, PLAN),
                parts,
                PaperSize.A4,
                List.of())
            .forBrowser();
    return SvgText.elements(SvgText.parse(page.substring(page.indexOf("<html"))), "article")
        .stream()
        .map(Element::getTextContent)
        .filter(text -> text.startsWith("P1.1"))
        .toList();
  }

  @Test
  void aSignTellsItsWaveAndWhatLiesInItFromTheTop() throws Exception {
    WavePlan waves = waves(List.of(List.of("W1-C3-1"), List.of("W3-C2-1", "W1-C2-1")));
    for (Part part : List.of(Part.SIGNS, Part.WAVES)) {
      assertThat(signs(waves, EnumSet.of(part)))
          .singleElement()
          .asString()
          .startsWith("P1.11 wave")
          .containsSubsequence(
              "120 kg whole pile",
              "Bring it in when course 1 lies on every wall.",
              "layer 2W1-C2-1, W3-C2-1Take first. Walls W1, W3; course 2",
              "layer 1W1-C3-1Wall W1; course 3",
              "Bearers under it: 2 of 0.60 m",
              "Take from the top.",
              "local codes go before this sign",
              "test job, revision 1, plan a1b2c3d4e5")
          .doesNotContain("Sheet ");
    }
    assertThat(signs(waves, EnumSet.of(Part.PULL))).isEmpty();
  }

  @Test
  void aPileOfManyLayersHasSeveralSheetsFromTheTop() throws Exception {
    List<List<String>> layers = new ArrayList<>();
    for (int layer = 0; layer < SignSheet.MOST_TIERS + 1; layer++) {
      layers.add(List.of("W1-C3-1"));
    }
    List<String> signs = signs(waves(layers), EnumSet.of(Part.SIGNS));
    assertThat(signs).hasSize(2);
    assertThat(signs.get(0)).containsSubsequence("Sheet 1 of 2", "layer 9", "layer 5");
    assertThat(signs.get(1)).containsSubsequence("Sheet 2 of 2", "layer 4", "layer 1");
    assertThat(signs.get(1)).doesNotContain("layer 5").doesNotContain("Take first");
  }
}
