package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import skidway.plan.Plan;
import skidway.plan.Task;

/** Whatever names a job has, pages stay pages and say nothing that nobody sees. */
class UglyNamesTest {
  /** Control characters and those that turn the order of letters (UAX #9, from memory). */
  private static final Pattern UNSEEN =
      Pattern.compile(
          "[\\u0000-\\u0008\\u000B\\u000C\\u000E-\\u001F\\u007F-\\u009F\\u061C\\u200E\\u200F\\u202A-\\u202E"
              + "\\u2066-\\u2069\\uFFFE\\uFFFF]");

  @Provide
  Arbitrary<String> uglyNames() {
    return UglyNames.any();
  }

  private static void isHarmless(String xml) throws Exception {
    assertThat(UNSEEN.matcher(xml).find()).as("has an unseen character").isFalse();
    Document page = SvgText.parse(xml);
    for (Element element : SvgText.elements(page, "*")) {
      assertThat(element.getTagName()).isNotIn("script", "img", "iframe", "object", "embed");
      for (int i = 0; i < element.getAttributes().getLength(); i++) {
        assertThat(element.getAttributes().item(i).getNodeName()).doesNotStartWith("on");
      }
    }
  }

  @Property(seed = "20310505", tries = 500)
  void escapedTextIsReadBackWithoutWhatIsUnseen(@ForAll("uglyNames") String name) throws Exception {
    String xml = new Markup().open("g", "a", name).text(name).close().done();
    isHarmless(xml);
    Element read = SvgText.parse(xml).getDocumentElement();
    assertThat(read.getAttributes().getLength()).isEqualTo(1);
    // XML makes one line end of carriage return and line feed, and blanks of them in attributes.
    long seen = name.replaceAll("\r\n?", "\n").codePoints().count();
    assertThat(read.getTextContent().codePoints().count()).isEqualTo(seen);
  }

  @Property(seed = "20310505", tries = 12)
  void pagesStayPages(@ForAll("uglyNames") String name) throws Exception {
    Task task = UglySite.task(name, 3);
    Plan plan = UglySite.plan(name, 3);
    for (MapSheet sheet : StackMap.sheets(task, plan, "f00d", PaperSize.A4)) {
      isHarmless(sheet.svg());
    }
    isHarmless(page(Packet.html(task, plan, "f00d", SampleAudit.broken(name))));
    for (TagFormat format : List.of(new TagSheet(PaperSize.A4, 8), new TagRoll(100, 75))) {
      isHarmless(page(TagPage.of(task, plan, "f00d", List.of(name), format).forBrowser()));
    }
  }

  private static String page(String html) {
    return html.substring(html.indexOf("<html"));
  }

  @Test
  void aSpotsCodeCannotBeMadeToReadBackwards() {
    assertThat(Escape.text("D\u202E21\u202C")).isEqualTo("D\uFFFD21\uFFFD");
    assertThat(Escape.text("\u05D01")).isEqualTo("\u05D01");
  }
}
