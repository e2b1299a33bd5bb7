package skidway.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PressTest {
  private static final Foot FOOT = new Foot("Job, revision 3, plan abc", "Helps to plan.", 9);

  @TempDir private Path dir = Path.of("");

  private static String page(String body) {
    return "<!DOCTYPE html>\n<html lang=\"en\"><head><title>T</title><style>"
        + "@page { size: 210mm 297mm; margin: 10mm 10mm 14mm; } .next { page-break-before: always; }"
        + " svg { width: 60mm; display: block; }</style></head><body>"
        + body
        + "</body></html>";
  }

  private Press alone() {
    return Press.searching(FontSearch.with(Optional.empty(), List.of(dir)));
  }

  private SeenPdf seen(String body, int copies) {
    return SeenPdf.of(alone().press(page(body), FOOT, copies).bytes());
  }

  @Test
  void lettersOfManyAlphabetsAreInTheFile() {
    String names = "Łódź Þingvellir Ελλάς Привет Հայաստան საქართველო";
    SeenPdf seen = seen("<p>" + names + "</p>", 1);
    assertThat(seen.text()).contains(names.split(" "));
    assertThat(seen.fonts()).isNotEmpty().allMatch(f -> f.matches("[A-Z]{6}\\+.*"));
    assertThat(seen.loose()).isEmpty();
  }

  @Test
  void textOfDrawingsIsTextToo() {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 60 20\">"
            + "<text x=\"30\" y=\"10\" font-size=\"4\" text-anchor=\"middle\">Ёлка D10</text></svg>";
    assertThat(seen(svg, 1).text()).contains("Ёлка D10");
  }

  @Test
  void whatADrawingCannotTakeToPaperIsRefused() {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 60 20\"><image x=\"1\"/></svg>";
    assertThatThrownBy(() -> seen(svg, 1)).hasMessageContaining("image");
    String filter = svg.replace("<image x=\"1\"/>", "<rect filter=\"url(#a)\"/>");
    assertThatThrownBy(() -> seen(filter, 1)).hasMessageContaining("filter");
  }

  /** Readers put text from right to left back into the order it is read in. */
  @Test
  void rightToLeftIsDrawnFromTheRight() {
    assertThat(seen("<p>spot שלום 12</p>", 1).text()).contains("שלום");
    assertThat(seen("<p>spot سلام</p>", 1).text()).contains("سلام");
  }

  @Test
  void eachCopyCountsItsOwnPages() {
    SeenPdf seen = seen("<p>one</p><p class=\"next\">two</p>", 3);
    assertThat(seen.pages()).hasSize(6);
    for (int i = 0; i < 6; i++) {
      assertThat(seen.pages().get(i))
          .contains(i % 2 == 0 ? "one" : "two")
          .contains("page " + (i % 2 + 1) + " of 2")
          .contains("copy " + (i / 2 + 1) + " of 3")
          .contains("Job, revision 3, plan abc")
          .contains("Helps to plan.");
      assertThat(seen.pages().get(i)).containsOnlyOnce("copy ");
    }
    assertThat(seen("<p>one</p>", 1).text()).doesNotContain("copy");
  }

  @Test
  void thePageHasTheSizeItsStyleSheetSays() {
    double[] size = seen("<p>one</p>", 1).sizesMm().get(0);
    assertThat(size[0]).isCloseTo(210, within(0.5));
    assertThat(size[1]).isCloseTo(297, within(0.5));
  }

  @Test
  void theSamePageGivesTheSameBytes() {
    String body = page("<p>one Ελλάς</p>");
    byte[] first = alone().press(body, FOOT, 2).bytes();
    assertThat(alone().press(body, FOOT, 2).bytes()).isEqualTo(first);
    assertThat(alone().press(body.replace("one", "two"), FOOT, 2).bytes()).isNotEqualTo(first);
  }

  @Test
  void lettersNoFontHasAreTold() {
    Pressed pressed = alone().press(page("<p>bundle 木1</p>"), FOOT, 1);
    assertThat(pressed.remarks())
        .containsExactly("\"bundle 木1\": no font on this computer has 木 (U+6728)");
  }

  @Test
  void aFontInAFolderHelps() {
    OddFont.with(0x6728, dir.resolve("odd.ttf"));
    Pressed pressed = alone().press(page("<p>bundle 木1</p>"), FOOT, 1);
    assertThat(pressed.remarks()).isEmpty();
    assertThat(SeenPdf.of(pressed.bytes()).text()).contains("木1");
  }

  @Test
  void aNamedFontHelps() {
    Path odd = OddFont.with(0x6728, dir.resolve("odd.bin"));
    Press press = Press.searching(FontSearch.with(Optional.of(odd), List.of()));
    assertThat(press.press(page("<p>木</p>"), FOOT, 1).remarks()).isEmpty();
  }

  @Test
  void aNamedFileThatIsNoFontIsRefused() throws Exception {
    Path text = Files.writeString(dir.resolve("a.ttf"), "no font at all");
    assertThatThrownBy(() -> Press.with(Optional.of(text)))
        .isInstanceOf(BadFont.class)
        .hasMessageContaining("a.ttf")
        .hasMessageContaining("Way out");
    assertThatThrownBy(() -> Press.with(Optional.of(dir.resolve("none.ttf"))))
        .isInstanceOf(BadFont.class);
  }

  /** Real files of these kinds begin so; more of them is not looked at. */
  @Test
  void fontsOfOtherKindsAreRefusedByTheirName() throws Exception {
    Map<String, String> kinds =
        Map.of("OTTO", "CFF", "wOFF", "web", "wOF2", "web", "ttcf", "forbids");
    for (Map.Entry<String, String> kind : kinds.entrySet()) {
      Path file = Files.writeString(dir.resolve("font"), kind.getKey() + "\0\0\0\0\0\0\0\0");
      assertThatThrownBy(() -> Press.with(Optional.of(file)))
          .as(kind.getKey())
          .isInstanceOf(BadFont.class)
          .hasMessageContaining(kind.getValue())
          .hasMessageContaining("Way out: name a TrueType font");
    }
  }

  @Test
  void aLongWordGoesOnInTheNextLine() {
    String id = "B-" + "0123456789".repeat(6);
    SeenPdf seen = seen("<table style=\"width: 40mm\"><tr><td>" + id + "</td></tr></table>", 1);
    assertThat(seen.text().replaceAll("\\s", "")).contains(id);
    assertThat(seen.text()).doesNotContain(id);
  }
}
