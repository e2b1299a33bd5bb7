package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import skidway.paper.Foot;
import skidway.paper.Press;
import skidway.plan.Task;
import skidway.site.Point;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;

/**
 * Prints a map at full size as a page of a PDF, lets PDFBox draw that as a printer with 300 dots to
 * the inch would, and measures a wall on it with the scale that is written there.
 */
class PrintedMapTest {
  private static final double DPI = 300;
  private static final double MM_PER_INCH = 25.4;
  private static final double WALL_M = 22;

  /** Darker than anything on the map but walls and letters. */
  private static final int DARK = 90;

  private static Task task() {
    Wall wall =
        new Wall("W", new Point(4, 9), new Point(4 + WALL_M, 9), 0.3, Starter.FULL, List.of());
    return Tasks.task(SiteBuilder.aSite().walls(wall).build());
  }

  private static BufferedImage printed(MapSheet sheet, PaperSize paper) throws IOException {
    Markup page = new Markup();
    page.open("html", "lang", "en").open("head").leaf("title", "map");
    page.open("style").verbatim(PageStyle.packetInPdf(paper, "")).close().close();
    page.open("body").open("main");
    MapSection.write(page, List.of(sheet), List.of());
    String html = page.close().close().close().done();
    Foot foot = new Foot("map", "", PaperSize.FOOT_MM);
    byte[] pdf = Press.with(Optional.empty()).press(html, foot, 1).bytes();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFRenderer(document).renderImageWithDPI(0, (float) DPI, ImageType.GRAY);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aWallMeasuresRightOnThePrintedPage(PaperSize paper) throws Exception {
    for (Paper way : List.of(paper.lying(), paper.standing())) {
      MapSheet sheet = StackMap.siteOnly(task(), way);
      BufferedImage page = printed(sheet, paper);
      double longerMm = Math.max(paper.widthMm(), paper.heightMm());
      double dots = way.lying() ? page.getWidth() : page.getHeight();
      assertThat(dots).isCloseTo(longerMm / MM_PER_INCH * DPI, within(1.5));
      Box wall = wall(sheet);
      int row = (int) ((PaperSize.MARGIN_MM + wall.centre().y()) / MM_PER_INCH * DPI);
      double onPaperMm = longestDark(page, row) / DPI * MM_PER_INCH;
      assertThat(onPaperMm * MapScales.ratio(sheet.svg()) / 1000)
          .as(paper + " " + way)
          .isCloseTo(WALL_M, within(0.005 * WALL_M));
    }
  }

  private static Box wall(MapSheet sheet) throws Exception {
    Element drawn =
        SvgText.elements(SvgText.parse(sheet.svg()), "polygon").stream()
            .filter(e -> e.getAttribute("data-wall").equals("W"))
            .findFirst()
            .orElseThrow();
    String points = drawn.getAttribute("points");
    return Box.of(
        List.of(points.split(" ", -1)).stream()
            .map(p -> p.split(",", -1))
            .map(p -> new PagePoint(Double.parseDouble(p[0]), Double.parseDouble(p[1])))
            .toList());
  }

  private static int longestDark(BufferedImage page, int row) {
    int longest = 0;
    int run = 0;
    for (int x = 0; x < page.getWidth(); x++) {
      run = page.getRaster().getSample(x, row, 0) < DARK ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return longest;
  }
}
