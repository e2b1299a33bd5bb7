package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import skidway.plan.Task;
import skidway.site.Wall;

/** Measures the pages of maps in the millimetres they are printed with. */
class MapScaleTest {
  private static final double SHARE = 0.005;

  @ParameterizedTest
  @EnumSource
  void wallsMeasureWhatTheyAreOnSite(PaperSize paper) throws Exception {
    Task task = SampleHouse.task();
    int measured = 0;
    for (MapSheet sheet : StackMap.sheets(task, SampleHouse.plan(), "", paper)) {
      double ratio = MapScales.ratio(sheet.svg());
      Document map = SvgText.parse(sheet.svg());
      for (Element drawn : SvgText.elements(map, "polygon")) {
        String id = drawn.getAttribute("data-wall");
        if (!id.isEmpty()) {
          Wall wall = task.site().wall(id).orElseThrow();
          List<double[]> corners = corners(drawn);
          assertThat(apart(corners.get(0), corners.get(1)) * ratio / 1000)
              .as(sheet.name() + " " + id)
              .isCloseTo(wall.lengthM(), within(SHARE * wall.lengthM()));
          measured++;
        }
      }
    }
    assertThat(measured).isGreaterThan(12);
  }

  @ParameterizedTest
  @EnumSource
  void theBarMeasuresWhatIsWrittenUnderIt(PaperSize paper) throws Exception {
    List<MapSheet> sheets = new ArrayList<>();
    sheets.addAll(StackMap.sheets(SampleHouse.task(), SampleHouse.plan(), "", paper));
    sheets.addAll(StackMap.sheets(UglySite.task(1), UglySite.plan(1), "", paper));
    assertThat(sheets).hasSizeGreaterThan(4);
    for (MapSheet sheet : sheets) {
      double unitM = sheet.svg().contains(", metres<") ? 1 : 0.3048;
      Element bar =
          SvgText.elements(SvgText.parse(sheet.svg()), "g").stream()
              .filter(e -> e.getAttribute("class").equals("scale-bar"))
              .findFirst()
              .orElseThrow();
      double fourPartsMm = 4 * Double.parseDouble(rect(bar).getAttribute("width"));
      double written =
          SvgText.elements(SvgText.parse(sheet.svg()), "text").stream()
              .filter(e -> e.getParentNode() instanceof Element up && same(up, bar))
              .map(Element::getTextContent)
              .filter(t -> t.matches("\\d+"))
              .mapToDouble(Double::parseDouble)
              .max()
              .orElseThrow();
      double siteM = written * unitM;
      assertThat(fourPartsMm * MapScales.ratio(sheet.svg()) / 1000)
          .as(sheet.name())
          .isCloseTo(siteM, within(SHARE * siteM));
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyPageFitsItsPaperOneWayOrTheOther(PaperSize paper) {
    List<MapSheet> sheets =
        Stream.of(SampleHouse.plan(), UglySite.plan(40))
            .flatMap(
                plan ->
                    StackMap.sheets(
                        plan.revision() == 3 ? SampleHouse.task() : UglySite.task(40),
                        plan,
                        "",
                        paper)
                        .stream())
            .toList();
    assertThat(sheets).extracting(MapSheet::paper).containsOnly(paper.lying(), paper.standing());
  }

  private static boolean same(Element up, Element bar) {
    return up.getAttribute("class").equals(bar.getAttribute("class"));
  }

  private static Element rect(Element bar) {
    return (Element) bar.getElementsByTagName("rect").item(0);
  }

  private static List<double[]> corners(Element polygon) {
    return Arrays.stream(polygon.getAttribute("points").split(" ", -1))
        .map(p -> Arrays.stream(p.split(",", -1)).mapToDouble(Double::parseDouble).toArray())
        .toList();
  }

  private static double apart(double[] a, double[] b) {
    return Math.hypot(a[0] - b[0], a[1] - b[1]);
  }
}
