package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
import skidway.site.Wall;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;

class StackMapTest {
  private static final String SAMPLE = StackMap.svg(task(), plan(), "a1b2c3d4e5f6", Paper.LYING);

  private static Task task() {
    return SampleHouse.task();
  }

  private static Plan plan() {
    return SampleHouse.plan();
  }

  @Test
  void wallsAreToScale() throws Exception {
    Document map = SvgText.parse(SAMPLE);
    assertThat(SAMPLE).contains("1:200 at full size", "designer govern");
    for (Wall wall : task().site().walls()) {
      Element drawn =
          SvgText.elements(map, "polygon").stream()
              .filter(e -> e.getAttribute("data-wall").equals(wall.id()))
              .findFirst()
              .orElseThrow();
      List<double[]> corners =
          Arrays.stream(drawn.getAttribute("points").split(" ", -1))
              .map(p -> Arrays.stream(p.split(",", -1)).mapToDouble(Double::parseDouble).toArray())
              .toList();
      double drawnMm =
          Math.hypot(corners.get(1)[0] - corners.get(0)[0], corners.get(1)[1] - corners.get(0)[1]);
      double expectedMm = wall.lengthM() * 1000 / 200;
      assertThat(drawnMm).as(wall.id()).isCloseTo(expectedMm, within(0.005 * expectedMm));
    }
  }

  @Test
  void everySpotAndPlacedBundleIsThere() throws Exception {
    List<String> texts = SvgText.all(SvgText.parse(SAMPLE)).stream().map(SvgText::text).toList();
    for (Stack stack : plan().stacks()) {
      assertThat(texts).contains(stack.spot().id()).containsAll(stack.bundleIds());
    }
    assertThat(texts)
        .contains("S1", "W1", "W6", "M2", "big oak", "stair opening", "crew lane", "front steps");
    assertThat(texts).contains("yard west, 1500 psf");
  }

  @Test
  void tiersStandInOrderOnTheirCard() throws Exception {
    Document map = SvgText.parse(SAMPLE);
    Element card =
        SvgText.elements(map, "g").stream()
            .filter(e -> e.getAttribute("data-card").equals("A3"))
            .findFirst()
            .orElseThrow();
    List<String> fromTheTop =
        SvgText.all(map).stream()
            .filter(t -> List.of("B10", "B11", "B21", "B22").contains(t.text()))
            .sorted((a, b) -> Double.compare(a.box().y0(), b.box().y0()))
            .map(SvgText::text)
            .toList();
    assertThat(fromTheTop).containsExactly("B22", "B21", "B11", "B10");
    assertThat(card.getTextContent()).contains("A3");
  }

  @Test
  void textsDoNotCoverEachOther() throws Exception {
    noOverlap(SAMPLE);
    noOverlap(StackMap.siteOnly(task(), Paper.LYING));
    noOverlap(StackMap.svg(UglySite.task(40), UglySite.plan(40), "", Paper.LYING));
    noOverlap(StackMap.svg(task(), plan(), "", new Paper(180, 260)));
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
    String svg = StackMap.siteOnly(Tasks.task(site), Paper.LYING);
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
    Box paper = Box.at(-0.2, -0.2, 264.4, 194.4);
    for (SvgText text : SvgText.all(SvgText.parse(SAMPLE))) {
      assertThat(paper.contains(text.box())).as(text.toString()).isTrue();
    }
  }

  @Test
  void stacksWithoutRoomAreToldInThePanel() throws Exception {
    Plan plan = UglySite.plan(40);
    Document map = SvgText.parse(StackMap.svg(UglySite.task(40), plan, "", Paper.LYING));
    List<String> told =
        SvgText.elements(map, "g").stream().map(e -> e.getAttribute("data-card")).toList();
    for (Stack stack : plan.stacks()) {
      assertThat(told).contains(stack.spot().id().replace('\u0001', '\uFFFD'));
    }
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
    assertThat(StackMap.siteOnly(task(), Paper.LYING))
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
    assertThat(texts).contains("overhead line: keep clear,", "excavation: no load beside it");
    assertThat(texts).contains("joists and what they lie on");
    assertThat(StackMap.siteOnly(UglySite.task(1), Paper.LYING))
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
    List<PagePoint> left = corners.stream().filter(p -> p.x() < box.x0() + 0.01).toList();
    // 10 ft to both sides, cut off upright where the line falls 6 ft in 240.
    double upright = 2 * 3048 / 200.0 / Math.cos(Math.atan2(6, 240));
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
