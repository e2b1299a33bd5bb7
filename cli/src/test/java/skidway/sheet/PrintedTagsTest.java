package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.paper.Foot;
import skidway.paper.Press;
import skidway.plan.Plan;
import skidway.plan.Task;

/**
 * Draws a sheet of tags from its PDF as a printer at 150 dpi would, and lets another reader than
 * the one the codes come with read it. Skipped where Debian's {@code zbar-tools} are not installed.
 */
class PrintedTagsTest {
  private static final double DPI = 150;
  private static final double MM_PER_INCH = 25.4;
  private static final Path NOWHERE = Path.of("");

  @TempDir private Path dir = Path.of("");

  private static Path program(String name) {
    Optional<Path> found =
        Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1))
            .map(folder -> Path.of(folder, name))
            .filter(Files::isExecutable)
            .findFirst();
    assumeTrue(found.isPresent(), name + " is not installed; printed tags are not tried");
    return found.orElse(NOWHERE);
  }

  private void run(File out, String... command) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command)
            .redirectError(dir.resolve("errors.txt").toFile())
            .redirectOutput(out)
            .start();
    boolean ended = process.waitFor(90, TimeUnit.SECONDS);
    process.destroyForcibly();
    assertThat(ended).as("%s ends", command[0]).isTrue();
  }

  private static BufferedImage printed(TagSheet sheet) throws IOException {
    Task task = SampleHouse.task();
    Plan plan = SampleHouse.plan();
    String html = TagPage.of(task, plan, "a1b2c3d4e5f60718", List.of(), sheet).forPdf();
    Foot foot = new Foot(Packet.heading(plan, "a1b2c3d4e5f60718"), "", 12);
    byte[] pdf = Press.with(Optional.empty()).press(html, foot, 1).bytes();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFRenderer(document).renderImageWithDPI(0, (float) DPI);
    }
  }

  private List<TagText> read(BufferedImage image) throws IOException, InterruptedException {
    Path picture = dir.resolve("seen.png");
    ImageIO.write(image, "png", picture.toFile());
    Path seen = dir.resolve("seen.txt");
    run(seen.toFile(), program("zbarimg").toString(), "--quiet", "--raw", picture.toString());
    String all = Files.readString(seen, StandardCharsets.UTF_8);
    return Pattern.compile("Skidway 1\n.*?\ncheck \\w{5}", Pattern.DOTALL)
        .matcher(all)
        .results()
        .map(r -> TagText.read(r.group()).orElseThrow())
        .toList();
  }

  private static BufferedImage turned(BufferedImage image, double degrees) {
    BufferedImage out = blank(image);
    Graphics2D g = out.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.rotate(Math.toRadians(degrees), image.getWidth() / 2.0, image.getHeight() / 2.0);
    g.drawImage(image, 0, 0, null);
    g.dispose();
    return out;
  }

  /** A grey smear across every code of a sheet with four tags, as of a wet glove. */
  private static BufferedImage smudged(BufferedImage image, TagSheet sheet) {
    BufferedImage out = blank(image);
    Graphics2D g = out.createGraphics();
    g.drawImage(image, 0, 0, null);
    g.setColor(new Color(120, 120, 120));
    double mm = DPI / MM_PER_INCH;
    for (int column = 0; column < sheet.columns(); column++) {
      double right = TagSheet.MARGIN_MM + (column + 1) * sheet.tagWidthMm() - TagSheet.PADDING_MM;
      for (int row = 0; row < sheet.rows(); row++) {
        double middle = TagSheet.MARGIN_MM + (row + 0.5) * sheet.tagHeightMm();
        int x = (int) ((right - 0.6 * sheet.qrMm()) * mm);
        g.fillOval(x, (int) (middle * mm), (int) (9 * mm), (int) (5 * mm));
      }
    }
    g.dispose();
    return out;
  }

  private static BufferedImage blank(BufferedImage like) {
    BufferedImage out =
        new BufferedImage(like.getWidth(), like.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = out.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, out.getWidth(), out.getHeight());
    g.dispose();
    return out;
  }

  private static void hasAll(List<TagText> seen, int count) {
    assertThat(new TreeSet<>(seen.stream().map(TagText::written).toList())).hasSize(count);
    assertThat(seen).allMatch(t -> t.revision() == 3 && t.fingerprint().equals("a1b2c3d4e5"));
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 4, 8})
  void allCodesOfASheetAreRead(int perPage) throws Exception {
    program("zbarimg");
    TagSheet sheet = new TagSheet(PaperSize.LETTER, perPage);
    hasAll(read(printed(sheet)), perPage);
  }

  @Test
  void codesOnACrookedSmudgedSheetAreRead() throws Exception {
    program("zbarimg");
    TagSheet sheet = new TagSheet(PaperSize.A4, 4);
    BufferedImage image = printed(sheet);
    hasAll(read(turned(image, 3)), 4);
    BufferedImage smudged = smudged(image, sheet);
    hasAll(read(smudged), 4);
    hasAll(read(turned(smudged, 3)), 4);
  }
}
