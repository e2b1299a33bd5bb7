package skidway.paper;

import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * What a page says of its parts to programs that read aloud. The page layer marks the background of
 * every box with a note of its own, hundreds on a page of a list; all say the same, that there is
 * nothing to read, so they share one. What is to be read is noted within the page, not as an object
 * of the file.
 */
final class MarkedParts extends COSDictionary {
  private static final COSName SILENT = COSName.getPDFName("Silent");

  private MarkedParts() {
    COSDictionary silent = new COSDictionary();
    silent.setItem(COSName.TYPE, COSName.getPDFName("Layout"));
    setItem(SILENT, silent);
  }

  /** A new last page of a document, in points. */
  static PDPage addPage(PDDocument document, float wide, float high) {
    PDPage page = new PDPage(new PDRectangle(wide, high));
    PDResources resources = new PDResources();
    resources.getCOSObject().setItem(COSName.PROPERTIES, new MarkedParts());
    page.setResources(resources);
    document.addPage(page);
    return page;
  }

  /** Each note on what is to be read is new, so that none need be looked for. */
  @Override
  public boolean containsValue(Object note) {
    return note instanceof COSDictionary about
        && COSName.BACKGROUND.equals(about.getCOSName(COSName.TYPE));
  }

  @Override
  public COSName getKeyForValue(Object note) {
    return SILENT;
  }

  @Override
  public void setItem(COSName name, COSBase note) {
    note.setDirect(true);
    super.setItem(name, note);
  }
}
