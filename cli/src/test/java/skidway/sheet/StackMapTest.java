package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Site;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;

class StackMapTest {
  private static final List<MapSheet> SHEETS =
      StackMap.sheets(task(), plan(), "a1b2c3d4e5f6", PaperSize.LETTER);
  private static final String SAMPLE = SHEETS.get(0).svg();

  private static Task task() {
    return SampleHouse.task();
  }

  private static Plan plan() {
    return SampleHouse.plan();
  }

  @Test
  void aPageForTheSiteAndForEachDeckAndYardThatHasStacks() {
    assertThat(SHEETS)
        .extracting(MapSheet::name)
        .containsExactly("Whole site", "deck", "yard south", "yard west");
    assertThat(SAMPLE).contains("map 1 of 4", "at full size", "designer govern");
  }

  @Test
  void pagesOfDecksAndYardsAreLarger() {
    assertThat(SHEETS)
        .extracting(sheet -> MapScales.ratio(sheet.svg()))
        .containsExactly(192.0, 96.0, 192.0, 96.0);
  }

  @Test
  void everySpotAndPlacedBundleIsThere() throws Exception {
    List<String> overview = texts(SAMPLE);
    List<String> near = new ArrayList<>();
    for (MapSheet sheet : SHEETS.subList(1, SHEETS.size())) {
      near.addAll(texts(sheet.svg()));
    }
    for (Stack stack : plan().stacks()) {
      assertThat(overview).contains(stack.spot().id());
      assertThat(near).contains(stack.spot().id()).containsAll(stack.bundleIds());
    }
    assertThat(overview).contains("S1", "W1", "W6", "M2", "big oak", "stair opening", "crew lane");
    assertThat(overview).contains("front steps", "yard west", "1,500 psf").doesNotContain("B01");
  }

  private static List<String> texts(String svg) throws Exception {
    return SvgText.all(SvgText.parse(svg)).stream().map(SvgText::text).toList();
  }

  @Test
  void tiersStandInOrderOnTheirCard() throws Exception {
    Element card = card(SHEETS.get(2).svg(), "A3");
    List<String> fromTheTop =
        SvgText.all(SvgText.parse(SHEETS.get(2).svg())).stream()
            .filter(t -> List.of("B10", "B11", "B21", "B22").contains(t.text()))
            .sorted((a, b) -> Double.compare(a.box().y0(), b.box().y0()))
            .map(SvgText::text)
            .toList();
    assertThat(fromTheTop).containsExactly("B22", "B21", "B11", "B10");
    String words = card.getTextContent();
    assertThat(words.indexOf("tier 4")).isBetween(0, words.indexOf("B22"));
    assertThat(words.indexOf("tier 1")).isBetween(words.indexOf("B11"), words.lastIndexOf("B10"));
  }

  @Test
  void aStacksMassStandsOnItsCardInTheJobsUnits() throws Exception {
    StackView stack =
        StackView.of(task(), plan()).stream()
            .filter(s -> s.spot().id().equals("A3"))
            .findFirst()
            .orElseThrow();
    String mass = task().figures().mass(stack.massKg());
    assertThat(mass).endsWith("lb");
    assertThat(card(SHEETS.get(2).svg(), "A3").getTextContent()).contains(mass);
  }

  private static Element card(String svg, String code) throws Exception {
    return SvgText.elements(SvgText.parse(svg), "g").stream()
        .filter(e -> e.getAttribute("data-card").equals(code))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void textsDoNotCoverEachOther() throws Exception {
    for (String svg : Drawings.ALL) {
      noOverlap(svg);
    }
  }

  @Test
  void aCraneOnTheTruckDoesNotCoverTheTrucksName() throws Exception {
    Site site =
        SiteBuilder.aSite()
            .machine(
                new Machine(
                    "crane",
                    List.of(new MachineStand("M", new Point(18, 2))),
                    List.of(new ChartRow(30, 3000))))
            .build();
    String svg = StackMap.siteOnly(Tasks.task(site), Paper.LYING).svg();
    Box diamond =
        SvgText.elements(SvgText.parse(svg), "circle").stream()
            .filter(c -> c.getAttribute("r").equals("0.75"))
            .map(c -> new PagePoint(number(c, "cx"), number(c, "cy")))
            .map(at -> Box.around(at, 2 * Stands.DIAMOND, 2 * Stands.DIAMOND))
            .findFirst()
            .orElseThrow();
    assertThat(SvgText.all(SvgText.parse(svg)))
        .anyMatch(t -> t.text().equals("truck"))
        .allMatch(t -> t.box().overlap(diamond) == 0, "clear of the stand");
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }

  @Test
  void nothingLeavesThePaper() throws Exception {
    for (String svg : Drawings.ALL) {
      Document drawing = SvgText.parse(svg);
      Element root = drawing.getDocumentElement();
      String[] size = root.getAttribute("viewBox").split(" ", -1);
      assertThat(root.getAttribute("width")).isEqualTo(size[2] + "mm");
      assertThat(root.getAttribute("height")).isEqualTo(size[3] + "mm");
      Box paper = Box.at(0, 0, Double.parseDouble(size[2]), Double.parseDouble(size[3])).grown(0.2);
      for (SvgText text : SvgText.all(drawing)) {
        assertThat(paper.contains(text.box())).as(text.toString()).isTrue();
      }
    }
  }

  @Test
  void everyStackHasItsCardAndItsCodeHoweverManyThereAre() throws Exception {
    Plan plan = UglySite.plan(40);
    List<String> cards = new ArrayList<>();
    List<String> codes = new ArrayList<>();
    for (MapSheet sheet : StackMap.sheets(UglySite.task(40), plan, "", PaperSize.A4)) {
      Document map = SvgText.parse(sheet.svg());
      SvgText.elements(map, "g").forEach(e -> cards.add(e.getAttribute("data-card")));
      SvgText.all(map).forEach(text -> codes.add(text.text()));
    }
    for (Stack stack : plan.stacks()) {
      assertThat(cards).contains(stack.spot().id().replace('\u0001', '\uFFFD'));
    }
    for (int i = 3; i < 40; i++) {
      // On the overview, on the page of the yard, and on its card.
      assertThat(Collections.frequency(codes, "P" + i)).as("P" + i).isEqualTo(3);
    }
  }

  @Test
  void aTallStackIsCutIntoCardsThatKeepTheOrder() throws Exception {
    List<String> ids = IntStream.rangeClosed(1, 40).mapToObj(i -> "bundle" + i).toList();
    Stack tall = new Stack(plan().stacks().get(0).spot(), ids);
    Plan plan = MapScales.with(plan(), List.of(tall));
    List<String> told = new ArrayList<>();
    for (MapSheet sheet : StackMap.sheets(task(), plan, "", PaperSize.LETTER)) {
      noOverlap(sheet.svg());
      told.addAll(texts(sheet.svg()));
    }
    told.removeIf(text -> !text.startsWith("bundle"));
    List<String> fromTheTop = new ArrayList<>(ids);
    Collections.reverse(fromTheTop);
    assertThat(told).isEqualTo(fromTheTop);
  }

  @Test
  void racksAndWaitingPlacesLookDifferent() throws Exception {
    List<Element> groups = SvgText.elements(SvgText.parse(SAMPLE), "g");
    assertThat(groups)
        .filteredOn(e -> e.getAttribute("class").equals("rack"))
        .extracting(e -> e.getAttribute("data-spot"))
        .containsExactly("R1");
    assertThat(groups)
        .filteredOn(e -> e.getAttribute("class").equals("waiting"))
        .extracting(e -> e.getAttribute("data-spot"))
        .containsExactly("S1");
  }

  @Test
  void aSiteWithoutAPlanNamesNoBundle() {
    assertThat(StackMap.siteOnly(task(), Paper.LYING).svg())
        .contains("Site before any plan")
        .contains(">W1<")
        .doesNotContain("B01");
  }

  @Test
  void hazardsOfTheGroundAreNamed() throws Exception {
    Document map = SvgText.parse(SAMPLE);
    List<String> texts = SvgText.all(map).stream().map(SvgText::text).toList();
    assertThat(texts).contains("street line", "13.8 kV, keep 10'-0\"");
    assertThat(String.join(" ", texts)).contains("open trench for the drain, 4'-0\" deep");
    assertThat(texts).contains("overhead line: keep clear,", "excavation: no load beside");
    assertThat(texts).contains("joists and what they lie on");
    assertThat(StackMap.siteOnly(UglySite.task(1), Paper.LYING).svg())
        .doesNotContain("overhead line:", "excavation:", "joists and");
  }

  @Test
  void theLineAndItsClearGroundAreToScaleAndStayOnTheMap() throws Exception {
    Document map = SvgText.parse(SAMPLE);
    Element band =
        SvgText.elements(map, "g").stream()
            .filter(e -> e.getAttribute("class").equals("overhead-bands"))
            .map(e -> (Element) e.getElementsByTagName("polygon").item(0))
            .findFirst()
            .orElseThrow();
    List<PagePoint> corners =
        Arrays.stream(band.getAttribute("points").split(" ", -1))
            .map(p -> p.split(",", -1))
            .map(p -> new PagePoint(Double.parseDouble(p[0]), Double.parseDouble(p[1])))
            .toList();
    Box box = Box.of(corners);
    assertThat(Box.at(0, 0, 264, 194).contains(box)).isTrue();
    List<PagePoint> left = corners.stream().filter(p -> p.x() < box.x0() + 0.02).toList();
    // 10 ft to both sides, cut off upright where the line falls 6 ft in 240.
    double upright = 2 * 3048 / MapScales.ratio(SAMPLE) / Math.cos(Math.atan2(6, 240));
    assertThat(Box.of(left).height()).isLessThanOrEqualTo(upright + 0.05);
    assertThat(Box.of(left).height()).isGreaterThan(upright / 2);
  }

  private static void noOverlap(String svg) throws Exception {
    List<SvgText> texts = SvgText.all(SvgText.parse(svg));
    assertThat(texts).hasSizeGreaterThan(10);
    List<String> covered = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      for (SvgText other : texts.subList(i + 1, texts.size())) {
        if (texts.get(i).box().overlap(other.box()) > 0.01) {
          covered.add(texts.get(i) + " and " + other);
        }
      }
    }
    assertThat(covered).isEmpty();
  }
}
