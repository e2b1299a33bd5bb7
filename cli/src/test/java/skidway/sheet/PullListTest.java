package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import skidway.erection.PullOrder;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.testkit.BundleBuilder;
import skidway.testkit.PlanBuilder;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;
import skidway.timber.Bundle;
import skidway.timber.Moisture;
import skidway.timber.Piece;

class PullListTest {
  private static final Site SITE = SiteBuilder.aSite().build();

  /** Bottom to top low, middle, top; the middle one is needed last. */
  private static final Task TASK =
      Tasks.task(
          SITE,
          aBundle("low").load("L1", 1).piece("W1", 1, 1, 3).piece("W1", 4, 1, 3, 2).build(),
          aBundle("middle").load("L1", 2).piece("W1", 5, 1, 3).piece("W1", 6, 1, 3).build(),
          aBundle("top").load("L1", 3).piece("W1", 2, 1, 3).piece("W1", 3, 1, 3).build(),
          aBundle("short").load("L1", 4).piece("W3", 1, 1, 1).build(),
          aBundle("tall").load("L1", 5).piece("W3", 2, 1, 1).build(),
          aBundle("left over").load("L1", 6).piece("W2", 1, 1, 2).build());

  private static final Plan PLAN =
      PlanBuilder.aPlan()
          .stack(spot("Y1", "yard", 10, 9, 4, 0.6), "low", "middle", "top")
          .stack(rack("YR1", "yard", 20, 9, 4, 0.6), "short", "tall")
          .unplaced("left over")
          .build(TASK);

  private static PullLine line(String mark) {
    return PullList.of(TASK, PLAN).stream()
        .filter(l -> l.piece().mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> over(String mark) {
    return line(mark).over().stream().map(PullLine.Over::mark).toList();
  }

  @Test
  void whatLiesOverAPieceAndIsNeededLaterIsNamedHighestFirst() {
    assertThat(over("W1-C1-1"))
        .containsExactly("W1-C2-1", "W1-C3-1", "W1-C5-1", "W1-C6-1", "W1-C4-1");
    // By its turn the top bundle is used up.
    assertThat(over("W1-C4-1")).containsExactly("W1-C5-1", "W1-C6-1");
    assertThat(over("W1-C2-1")).isEmpty();
    assertThat(over("W1-C5-1")).isEmpty();
  }

  @Test
  void whatIsNeededOnTheSameHeightIsNotMovedAside() {
    Task task =
        Tasks.task(
            SITE,
            aBundle("low").load("L1", 1).piece("W1", 1, 1, 3).piece("W3", 1, 2, 3, 2).build(),
            aBundle("high").load("L1", 2).piece("W3", 1, 1, 3).piece("W3", 2, 1, 3).build());
    Plan plan =
        PlanBuilder.aPlan().stack(spot("Y1", "yard", 10, 9, 4, 0.6), "low", "high").build(task);
    assertThat(PullList.of(task, plan).get(0).over())
        .containsExactly(new PullLine.Over("W3-C2-1", "high"));
  }

  @Test
  void inARackNothingIsInTheWay() {
    assertThat(over("W3-C1-1")).isEmpty();
    assertThat(line("W3-C2-1").rack()).isTrue();
    assertThat(line("W3-C2-1").tier()).isZero();
  }

  @Test
  void tierAndLayerAreCountedFromBelow() {
    assertThat(line("W1-C4-1"))
        .returns("Y1", PullLine::place)
        .returns(1, PullLine::tier)
        .returns(2, PullLine::layer);
    assertThat(line("W1-C3-1").tier()).isEqualTo(3);
  }

  @Test
  void aBundleWithoutASpotIsListedAllTheSame() {
    assertThat(line("W2-C1-1")).returns("no spot", PullLine::place).returns(0, PullLine::tier);
  }

  @Test
  void peopleAreForTheLikelyMassAndADeviceForTheHigh() {
    Piece piece = spread();
    double likelyKg = piece.mass().likelyKg();
    assertThat(piece.mass().highKg()).isGreaterThan(likelyKg);
    Settings three =
        Settings.defaults()
            .with(Setting.LIFT_PER_PERSON, likelyKg / 1.4, "")
            .with(Setting.TEAM_MOST, 3, "");
    Team team = new Team(three);
    assertThat(team.people(piece)).isEqualTo(3);
    assertThat(team.needsDevice(piece)).isTrue();
    Team weak = new Team(three.with(Setting.LIFT_PER_PERSON, piece.mass().highKg() / 1.51, ""));
    assertThat(weak.needsDevice(piece)).isTrue();
    Team strong = new Team(three.with(Setting.LIFT_PER_PERSON, piece.mass().highKg() / 1.5, ""));
    assertThat(strong.needsDevice(piece)).isFalse();
  }

  /** May be wetter, and so heavier, than it likely is. */
  private static Piece spread() {
    Piece like = TASK.delivery().pieces().get(0);
    return new Piece(
        "P",
        "W1",
        1,
        1,
        OptionalDouble.empty(),
        2,
        like.section(),
        like.species(),
        new Moisture(0, 0, 50),
        OptionalDouble.empty());
  }

  @Test
  void manyPiecesAreCountedFewAreNamed() {
    assertThat(RehandleWords.of(line("W1-C1-1").over())).isEqualTo("5 pieces of top, middle, low");
    assertThat(RehandleWords.of(line("W1-C4-1").over())).isEqualTo("W1-C5-1, W1-C6-1");
    assertThat(RehandleWords.of(List.of())).isEmpty();
  }

  @Test
  void everyPieceIsThereOnceInTheOrderOfErection() {
    for (int seed = 0; seed < 40; seed++) {
      Random random = new Random(seed);
      Task task = Tasks.task(SITE, someBundles(random));
      PlanBuilder builder = PlanBuilder.aPlan();
      List<String> ids = task.delivery().bundles().stream().map(Bundle::id).toList();
      int cut = random.nextInt(ids.size());
      builder.stack(spot("Y1", "yard", 10, 9, 4, 0.6), ids.subList(0, cut).toArray(String[]::new));
      ids.subList(cut, ids.size()).forEach(builder::unplaced);
      List<PullLine> lines = PullList.of(task, builder.build(task));
      List<Piece> inOrder =
          PullOrder.of(SITE, task.delivery().pieces()).placements().stream()
              .map(p -> p.piece())
              .toList();
      assertThat(lines).extracting(PullLine::piece).isEqualTo(inOrder);
      assertThat(inOrder).containsExactlyInAnyOrderElementsOf(task.delivery().pieces());
      for (PullLine line : lines) {
        assertThat(line.bundle().pieces()).contains(line.piece());
        assertThat(line.spot().isPresent()).isEqualTo(ids.indexOf(line.bundle().id()) < cut);
      }
    }
  }

  private static Bundle[] someBundles(Random random) {
    List<BundleBuilder> bundles = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      bundles.add(aBundle("B" + i).load("L1", i + 1));
    }
    for (int wall = 1; wall <= 4; wall++) {
      for (int course = 1; course <= 4; course++) {
        for (int position = 1; position <= 2; position++) {
          bundles.get(random.nextInt(4)).piece("W" + wall, course, position, 2);
        }
      }
    }
    return bundles.stream().map(BundleBuilder::build).toArray(Bundle[]::new);
  }

  @Test
  void theSheetHasARowAPieceUnderItsWallAndCourse() throws Exception {
    String page = Packet.html(TASK, PLAN, "a1b2c3d4e5f6", SampleAudit.nothing());
    List<Element> rows =
        SvgText.elements(SvgText.parse(page.substring(page.indexOf("<html"))), "tr");
    List<String> headings = texts(rows, "wall");
    assertThat(headings).hasSize(9).doesNotHaveDuplicates();
    assertThat(headings.get(0)).isEqualTo("Wall W1, course 11 piece, at the foot");
    List<String> pulls = texts(rows, "pull");
    assertThat(pulls).hasSameSizeAs(TASK.delivery().pieces());
    assertThat(pulls.get(0))
        .startsWith("1W1-C1-1")
        .contains("Y1", "1 of 2", "low")
        .endsWith("5 pieces of top, middle, low");
    assertThat(pulls).anyMatch(t -> t.contains("W2-C1-1") && t.contains("no spot"));
  }

  private static List<String> texts(List<Element> rows, String kind) {
    return rows.stream()
        .filter(e -> List.of(e.getAttribute("class").split(" ")).contains(kind))
        .map(Element::getTextContent)
        .toList();
  }
}
