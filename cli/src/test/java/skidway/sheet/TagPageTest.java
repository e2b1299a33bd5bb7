package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import skidway.plan.Plan;
import skidway.plan.Task;

class TagPageTest {
  private static final String FINGERPRINT = "a1b2c3d4e5f60718";
  private static final TagSheet FOUR = new TagSheet(PaperSize.LETTER, 4);

  private static String page(Task task, Plan plan, TagSheet sheet) {
    return TagPage.of(task, plan, FINGERPRINT, List.of(), sheet).forBrowser();
  }

  private static Document parse(String page) throws Exception {
    return SvgText.parse(page.substring(page.indexOf("<html")));
  }

  private static List<Element> ofClass(Document page, String tag, String start) {
    return SvgText.elements(page, tag).stream()
        .filter(e -> e.getAttribute("class").startsWith(start))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({"2, 31", "4, 16", "8, 8"})
  void everyBundleHasTwoTags(int perPage, int sheets) throws Exception {
    TagSheet sheet = new TagSheet(PaperSize.A4, perPage);
    Document page = parse(page(SampleHouse.task(), SampleHouse.plan(), sheet));
    assertThat(ofClass(page, "article", "tag")).hasSize(62);
    assertThat(ofClass(page, "section", "sheet")).hasSize(sheets);
  }

  @Test
  void aTagSaysAllThatMatters() throws Exception {
    Document page = parse(page(SampleHouse.task(), SampleHouse.plan(), FOUR));
    String tag =
        ofClass(page, "article", "tag").stream()
            .map(Element::getTextContent)
            .filter(t -> t.contains("B13"))
            .findFirst()
            .orElseThrow();
    assertThat(tag)
        .startsWith("A5tier 2 of ")
        .contains("End 1 of 2", "points ", "left, from open side", "load L1", " off, at most ")
        .contains("Set down first at S1")
        .contains("Larkhollow house, revision 3, plan a1b2c3d4e5");
  }

  @Test
  void aBundleWithoutASpotSaysSo() {
    assertThat(page(SampleHouse.task(), SampleHouse.plan(), FOUR)).contains(">NO SPOT<");
  }

  @Test
  void aPlanThatBreaksRulesWarnsOnEveryTag() {
    String page =
        TagPage.of(UglySite.task(3), UglySite.plan(3), "", List.of("laneClear: <b>no</b>"), FOUR)
            .forBrowser();
    assertThat(page).contains("Do not unload by this plan", "laneClear: &lt;b&gt;no&lt;/b&gt;");
    assertThat(page.split("This plan breaks rules", -1)).hasSize(7);
  }

  @Test
  void spitefulNamesStayText() throws Exception {
    String page = page(UglySite.task(3), UglySite.plan(3), FOUR);
    assertThat(page).doesNotContain("<script", "<b>W</b>", "\u0001");
    assertThat(page).contains("&lt;script&gt;");
    assertThat(SvgText.elements(parse(page), "script")).isEmpty();
  }

  @Test
  void nothingIsFetched() {
    String page = page(SampleHouse.task(), SampleHouse.plan(), FOUR);
    assertThat(Pattern.compile("(?:https?:)?//[\\w.-]+").matcher(page).results())
        .allMatch(r -> r.group().equals("http://www.w3.org"));
    assertThat(page).doesNotContain("@import", "url(", "src=", "<link", "href");
  }

  /** The drawing in the page, not the encoder's answer, is what a phone sees. */
  @ParameterizedTest
  @ValueSource(strings = {"A", "Söhne 名前", "Skidway 1\njob Larkhollow house\nplan 3 a1b2c3d4e5"})
  void theDrawnCodeIsReadAgain(String text) throws Exception {
    Markup page = new Markup();
    QrCode.write(page, text, "code");
    Result read = decode(raster(page.done(), 3));
    assertThat(read.getText()).isEqualTo(text);
    assertThat(read.getResultMetadata().values()).contains("Q");
  }

  @Test
  void aTagsCodesAreReadFromThePage() throws Exception {
    Matches codes = new Matches(page(UglySite.task(3), UglySite.plan(3), FOUR));
    assertThat(codes.svgs()).hasSize(6);
    for (int i = 0; i < 6; i++) {
      TagText text = TagText.read(decode(raster(codes.svgs().get(i), 2)).getText()).orElseThrow();
      assertThat(text.end()).isEqualTo(i % 2 + 1);
      assertThat(text.fingerprint()).isEqualTo("a1b2c3d4e5");
    }
  }

  @Test
  void theQuietZoneIsFourModulesWide() {
    ByteMatrix modules = QrCode.modules("x");
    Markup page = new Markup();
    QrCode.write(page, "x", "code");
    int edge = modules.getWidth() + 8;
    assertThat(page.done()).contains("viewBox=\"0 0 " + edge + " " + edge + "\"", "d=\"M4 4h7v1");
  }

  /** The drawings of codes in a page. */
  private record Matches(String page) {
    List<String> svgs() {
      return Pattern.compile("<svg[^>]*role=\"img\".*?</svg>")
          .matcher(page)
          .results()
          .map(r -> r.group())
          .toList();
    }
  }

  /** Fills the path's rectangles, so many points a module. */
  private static int[][] raster(String svg, int points) throws Exception {
    Document document = SvgText.parse(svg);
    String box = document.getDocumentElement().getAttribute("viewBox");
    int edge = Integer.parseInt(box.split(" ", -1)[2]);
    int[][] image = new int[edge * points][edge * points];
    for (int[] row : image) {
      Arrays.fill(row, 0xFFFFFF);
    }
    String path = SvgText.elements(document, "path").get(0).getAttribute("d");
    Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-(\\d+)z")
        .matcher(path)
        .results()
        .forEach(
            r -> {
              int x = Integer.parseInt(r.group(1)) * points;
              int y = Integer.parseInt(r.group(2)) * points;
              int wide = Integer.parseInt(r.group(3)) * points;
              for (int row = y; row < y + points; row++) {
                Arrays.fill(image[row], x, x + wide, 0);
              }
            });
    return image;
  }

  private static Result decode(int[][] image) throws Exception {
    int edge = image.length;
    int[] flat = Arrays.stream(image).flatMapToInt(Arrays::stream).toArray();
    RGBLuminanceSource source = new RGBLuminanceSource(edge, edge, flat);
    return new QRCodeReader()
        .decode(
            new BinaryBitmap(new HybridBinarizer(source)), Map.of(DecodeHintType.TRY_HARDER, true));
  }
}
