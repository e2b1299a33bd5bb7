package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import skidway.rules.Flag;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;

class RulesPageTest {
  private static final Settings SETTINGS =
      Settings.defaults().with(Setting.STACK_GAP, 0.2, "<b>tight</b> & measured");
  private static final String PAGE =
      RulesPage.html("Limits of <Larkhollow> & co", SETTINGS, SampleHouse.task().figures());

  private static Document parse() throws Exception {
    return SvgText.parse(PAGE.substring(PAGE.indexOf("<html")));
  }

  @Test
  void everyRuleHeadsItsLimits() throws Exception {
    List<Element> groups = SvgText.elements(parse(), "tbody");
    assertThat(groups).hasSameSizeAs(Rule.values());
    Iterator<Element> next = groups.iterator();
    for (Rule rule : Rule.values()) {
      String text = next.next().getTextContent();
      assertThat(text).contains(rule.id(), rule.sentence(), rule.source());
      for (Setting setting : rule.settings()) {
        assertThat(text)
            .contains(setting.key(), setting.source(), setting.flag().words())
            .contains(setting.publication().edition());
      }
    }
  }

  @Test
  void everyHeadSaysWhatItIsTheHeadOf() throws Exception {
    List<Element> heads = SvgText.elements(parse(), "th");
    assertThat(heads).isNotEmpty();
    for (Element head : heads) {
      assertThat(head.getAttribute("scope")).isIn("col", "row", "rowgroup");
      assertThat(head.getAttribute("role")).isIn("columnheader", "rowheader");
    }
  }

  @Test
  void whatIsNotSureStandsInAFrame() throws Exception {
    long framed =
        SvgText.elements(parse(), "strong").stream()
            .filter(e -> e.getAttribute("class").equals("flag"))
            .count();
    long unsure =
        Arrays.stream(Rule.values())
            .flatMap(rule -> rule.settings().stream())
            .filter(s -> s.flag() != Flag.SEEN && s.flag() != Flag.COMMON_PRACTICE)
            .count();
    assertThat(framed).isEqualTo(unsure).isPositive();
  }

  @Test
  void namesAndReasonsStayText() throws Exception {
    assertThat(PAGE)
        .contains("Changed: &lt;b&gt;tight&lt;/b&gt; &amp; measured", "&lt;Larkhollow&gt; &amp; co")
        .doesNotContain("<b>tight");
    assertThat(SvgText.elements(parse(), "title").get(0).getTextContent())
        .isEqualTo("Rules. Limits of <Larkhollow> & co");
  }

  @Test
  void nothingIsFetched() {
    assertThat(PAGE).doesNotContain("http", "@import", "url(", "src=", "<link", "<script");
  }
}
