package skidway.paper;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import java.io.File;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Element;

/**
 * Takes the drawings of a page into its PDF: lines stay lines, text stays text in the page's own
 * fonts. Knows the elements our drawings are made of and refuses others.
 */
final class SvgDrawings implements SVGDrawer {
  private final PDDocument document;
  private final Letters letters;

  SvgDrawings(PDDocument document, Letters letters) {
    this.document = document;
    this.letters = letters;
  }

  @Override
  public SVGImage buildSVGImage(
      Element svg, Box box, CssContext css, double wide, double high, double dotsPerPixel) {
    return new SvgPicture(svg, SvgSize.of(svg, wide, high, dotsPerPixel), document, letters);
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> faces, SharedContext context) {
    if (!faces.isEmpty()) {
      throw new IllegalArgumentException("Fonts of a page are not taken in by its style sheet.");
    }
  }

  @Override
  public void addFontFile(File file, String family, Integer weight, FontStyle style) {
    throw new IllegalArgumentException("Fonts are not taken in as files, found " + file + ".");
  }

  @Override
  public void close() {
    // Nothing is held open.
  }
}
