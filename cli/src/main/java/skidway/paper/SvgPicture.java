package skidway.paper;

import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer.SVGImage;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;
import org.w3c.dom.Element;

/** One drawing on its place on a page. */
final class SvgPicture implements SVGImage {
  private final Element svg;
  private final SvgSize size;
  private final PDDocument document;
  private final Letters letters;

  SvgPicture(Element svg, SvgSize size, PDDocument document, Letters letters) {
    this.svg = svg;
    this.size = size;
    this.document = document;
    this.letters = letters;
  }

  @Override
  public int getIntrinsicWidth() {
    return (int) Math.round(size.wide());
  }

  @Override
  public int getIntrinsicHeight() {
    return (int) Math.round(size.high());
  }

  @Override
  public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
    PdfBoxOutputDevice page = (PdfBoxOutputDevice) device;
    Rectangle place =
        new Rectangle(
            (int) Math.round(x), (int) Math.round(y), getIntrinsicWidth(), getIntrinsicHeight());
    try {
      page.drawPdfAsImage(form(page.getDotsPerPoint()), place, place.width, place.height);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private PDFormXObject form(float dotsPerPoint) throws IOException {
    float wide = (float) (size.wide() / dotsPerPoint);
    float high = (float) (size.high() / dotsPerPoint);
    // The kind of form that its content can be written into packed.
    PDAppearanceStream form = new PDAppearanceStream(document);
    form.setBBox(new PDRectangle(wide, high));
    form.setResources(new PDResources());
    double scale = size.scale() / dotsPerPoint;
    double spareX = (wide - size.across() * scale) / 2 - size.x0() * scale;
    double spareY = (high - size.down() * scale) / 2 - size.y0() * scale;
    try (OutputStream out = form.getStream().createOutputStream(COSName.FLATE_DECODE);
        PDPageContentStream content = new PDPageContentStream(document, form, out)) {
      // Drawings count downward, PDF counts upward.
      content.transform(
          new Matrix((float) scale, 0, 0, (float) -scale, (float) spareX, (float) (high - spareY)));
      new SvgPainter(content, letters).children(svg, SvgLook.PLAIN.with(svg));
    }
    return form;
  }
}
