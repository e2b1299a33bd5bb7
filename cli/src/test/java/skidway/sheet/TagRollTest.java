package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import skidway.units.UnitSystem;

class TagRollTest {
  private static String page(TagRoll roll, List<String> broken) {
    return TagPage.of(SampleHouse.task(), SampleHouse.plan(), "a1b2c3d4e5f60718", broken, roll)
        .forBrowser();
  }

  @ParameterizedTest
  @CsvSource({
    "4x6in, 101.6, 152.4",
    "100x150mm, 100, 150",
    "' 4 X 6.5 in ', 101.6, 165.1",
    "3×4in, 76.2, 101.6",
    "100x75mm, 100, 75",
    "320x75mm, 320, 75"
  })
  void aSizeIsWidthByLength(String written, double widthMm, double lengthMm) {
    TagRoll roll = TagRoll.read(written).orElseThrow();
    assertThat(roll.widthMm()).isEqualTo(widthMm, within());
    assertThat(roll.lengthMm()).isEqualTo(lengthMm, within());
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"4x6", "4in", "4x6cm", "-4x6in", "x", "", "4x6in x", "4,5x6in"})
  void whatIsNoSizeIsNotRead(String written) {
    assertThat(TagRoll.read(written)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"74.9x100mm", "99x99mm", "2x3in", "320.1x100mm", "0x0mm"})
  void aLabelTooSmallOrTooLargeIsTold(String written) {
    assertThatThrownBy(() -> TagRoll.read(written))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least 75 by 100 mm");
  }

  @Test
  void theUsualLabelGoesWithTheUnits() {
    assertThat(TagRoll.usualWith(UnitSystem.US)).isEqualTo(TagRoll.read("4x6in").orElseThrow());
    assertThat(TagRoll.usualWith(UnitSystem.METRIC)).isEqualTo(new TagRoll(100, 150));
  }

  @Test
  void everyTagIsALabelAndEveryPageAsLargeAsOne() throws Exception {
    String html = page(new TagRoll(101.6, 152.4), List.of());
    assertThat(html).contains("@page { size: 101.6mm 152.4mm; margin: 0; }");
    List<Element> sections =
        SvgText.elements(SvgText.parse(html.substring(html.indexOf("<html"))), "section");
    assertThat(sections).hasSize(62).allMatch(s -> s.getAttribute("class").equals("label"));
    assertThat(sections).allMatch(s -> s.getElementsByTagName("article").getLength() == 1);
    assertThat(html).doesNotContain("class=\"cuts\"");
  }

  /** The same plan on a sheet and on a roll: only the letters' sizes differ. */
  @Test
  void aLabelSaysWhatATagCutFromASheetSays() throws Exception {
    String cut =
        TagPage.of(
                SampleHouse.task(),
                SampleHouse.plan(),
                "a1b2c3d4e5f60718",
                List.of(),
                new TagSheet(PaperSize.LETTER, 4))
            .forBrowser();
    String label = page(new TagRoll(101.6, 152.4), List.of());
    assertThat(codes(label)).hasSize(62).isEqualTo(codes(cut));
  }

  private static List<String> codes(String html) {
    return Pattern.compile("aria-label=\"Code: [^\"]*")
        .matcher(html)
        .results()
        .map(r -> r.group())
        .toList();
  }

  @Test
  void aPlanThatBreaksRulesWarnsOnEveryLabel() {
    String html = page(new TagRoll(100, 75), List.of("laneClear: no"));
    assertThat(html.split("This plan breaks rules. Do not unload by it", -1)).hasSize(63);
  }
}
