package skidway.paper;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;

/** Writes the foot onto finished pages. */
final class FootPainter {
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double SIZE_MM = 2.8;

  /** How far the lower line stands from the paper's edge: common printers' blind edge is less. */
  private static final double LOWEST_MM = 4.8;

  private static final double GAP_MM = 5;

  private final PDDocument document;
  private final Letters letters;
  private final Foot foot;

  FootPainter(PDDocument document, Letters letters, Foot foot) {
    this.document = document;
    this.letters = letters;
    this.foot = foot;
  }

  /**
   * @param number the page's, within its copy
   * @param copy which copy this is, in words; may be empty
   */
  void paint(PDPage page, int number, int pages, String copy) throws IOException {
    double wide = page.getMediaBox().getWidth() / POINTS_PER_MM;
    try (PDPageContentStream out =
        new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
      // Readers aloud leave it out: it is no part of the text.
      out.beginMarkedContent(COSName.ARTIFACT);
      out.setNonStrokingColor(0.11f, 0.11f, 0.106f);
      String count = "page " + number + " of " + pages;
      if (foot.caution().isEmpty()) {
        String right = copy.isEmpty() ? count : copy + ", " + count;
        line(out, foot.words(), right, LOWEST_MM, wide);
      } else {
        line(out, foot.words(), count, LOWEST_MM + SIZE_MM * 1.35, wide);
        line(out, foot.caution(), copy, LOWEST_MM, wide);
      }
      out.endMarkedContent();
    }
  }

  private void line(PDPageContentStream out, String left, String right, double up, double wide)
      throws IOException {
    double rightMm = widthMm(letters.runs(right, true));
    double room = wide - 2 * foot.sidesMm() - rightMm - GAP_MM;
    show(out, fitted(left, room), foot.sidesMm(), up);
    show(out, letters.runs(right, true), wide - foot.sidesMm() - rightMm, up);
  }

  /** The text, its middle left out when it is too wide: revision and plan stand at its end. */
  private List<Letters.Run> fitted(String text, double mostMm) {
    int[] all = text.codePoints().toArray();
    List<Letters.Run> runs = letters.runs(text, false);
    for (int left = all.length - 2; left > 8 && widthMm(runs) > mostMm; left--) {
      int head = left / 3;
      int tail = left - head;
      String shorter =
          new String(all, 0, head) + "\u2026" + new String(all, all.length - tail, tail);
      runs = letters.runs(shorter, false);
    }
    return runs;
  }

  private static double widthMm(List<Letters.Run> runs) {
    return runs.stream().mapToDouble(Letters.Run::width).sum() * SIZE_MM / 1000;
  }

  private static void show(PDPageContentStream out, List<Letters.Run> runs, double x, double up)
      throws IOException {
    if (runs.isEmpty()) {
      return;
    }
    out.beginText();
    out.newLineAtOffset((float) (x * POINTS_PER_MM), (float) (up * POINTS_PER_MM));
    for (Letters.Run run : runs) {
      out.setFont(run.font(), (float) (SIZE_MM * POINTS_PER_MM));
      out.showText(run.text());
    }
    out.endText();
  }
}
