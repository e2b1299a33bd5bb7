package skidway.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;

/** A PDF as a reader sees it: text page by page, sizes, fonts. */
public record SeenPdf(
    List<String> pages, List<double[]> sizesMm, TreeSet<String> fonts, TreeSet<String> loose) {

  /** Reads one. */
  public static SeenPdf of(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      SeenPdf seen =
          new SeenPdf(new ArrayList<>(), new ArrayList<>(), new TreeSet<>(), new TreeSet<>());
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper text = new PDFTextStripper();
        text.setSortByPosition(true);
        text.setStartPage(page);
        text.setEndPage(page);
        text.setLineSeparator("\n");
        seen.pages.add(text.getText(document));
        PDPage sheet = document.getPage(page - 1);
        double mm = 25.4 / 72;
        seen.sizesMm.add(
            new double[] {
              sheet.getMediaBox().getWidth() * mm, sheet.getMediaBox().getHeight() * mm
            });
        seen.collect(sheet.getResources());
      }
      return seen;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void collect(PDResources resources) throws IOException {
    for (COSName name : resources.getFontNames()) {
      PDFont font = resources.getFont(name);
      fonts.add(font.getName());
      if (!font.isEmbedded()) {
        loose.add(font.getName());
      }
    }
    for (COSName name : resources.getXObjectNames()) {
      if (resources.getXObject(name) instanceof PDFormXObject form) {
        collect(form.getResources());
      }
    }
  }

  /** All pages' text, with what parts them. */
  public String text() {
    return String.join("\f\n", pages);
  }
}
