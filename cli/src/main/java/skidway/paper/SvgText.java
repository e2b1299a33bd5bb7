package skidway.paper;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Paints a line of text of a drawing. */
final class SvgText {
  private final PDPageContentStream out;
  private final Letters letters;
  private final SvgLook look;

  SvgText(PDPageContentStream out, Letters letters, SvgLook look) {
    this.out = out;
    this.letters = letters;
    this.look = look;
  }

  void paint(Element text, double x, double y) throws IOException {
    for (Node n = text.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        throw new IllegalArgumentException(
            "Text of drawings on paper has no " + child.getTagName() + " in it.");
      }
    }
    double size = look.number("font-size", 16);
    String weight = look.word("font-weight", "400");
    List<Letters.Run> runs =
        letters.runs(text.getTextContent(), weight.equals("700") || weight.equals("bold"));
    double wide = runs.stream().mapToDouble(Letters.Run::width).sum() * size / 1000;
    double left =
        switch (look.word("text-anchor", "start")) {
          case "middle" -> x - wide / 2;
          case "end" -> x - wide;
          default -> x;
        };
    if (look.paints("stroke", "none")) {
      out.setStrokingColor(look.colour("stroke"));
      out.setLineWidth((float) look.number("stroke-width", 1));
      out.setLineJoinStyle(1);
      show(runs, left, y, size, RenderingMode.STROKE);
    }
    out.setNonStrokingColor(look.colour("fill"));
    show(runs, left, y, size, RenderingMode.FILL);
  }

  private void show(List<Letters.Run> runs, double left, double y, double size, RenderingMode mode)
      throws IOException {
    out.beginText();
    out.setRenderingMode(mode);
    double x = left;
    for (Letters.Run run : runs) {
      out.setFont(run.font(), (float) size);
      // Drawings count downward; letters stand upright all the same.
      out.setTextMatrix(new Matrix(1, 0, 0, -1, (float) x, (float) y));
      out.showText(run.text());
      x += run.width() * size / 1000;
    }
    out.endText();
  }
}
