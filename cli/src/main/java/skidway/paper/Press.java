package skidway.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.TextDirection;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.zip.CRC32;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/**
 * Prints pages into PDF files. The same page gives the same file, byte for byte, where the same
 * fonts are found.
 */
public final class Press {
  static final String PRODUCER = "Skidway";

  /** The library counts the rules of all style sheets together, unguarded. */
  private static final Object READING_STYLES = new Object();

  private final FontSearch search;

  private Press(FontSearch search) {
    this.search = search;
  }

  /**
   * A press that looks into the computer's folders for letters its own fonts lack.
   *
   * @param font a font to take such letters from before all others
   * @throws BadFont if that file is no font that can be put into a PDF
   */
  public static Press with(Optional<Path> font) {
    return new Press(FontSearch.with(font, FontFolders.usual()));
  }

  static Press searching(FontSearch search) {
    return new Press(search);
  }

  /**
   * Prints a page.
   *
   * @param html well-formed, with its style sheet and drawings in it
   * @param copies how many times the whole of it, one copy after the other
   */
  public Pressed press(String html, Foot foot, int copies) {
    Document page = WellFormed.parse(html);
    FontShelf shelf = FontShelf.ours();
    List<String> remarks = search.fill(shelf, PageText.of(page, foot));
    PdfPage.complete(page, shelf);
    try (PDDocument document = new PDDocument()) {
      Letters letters = new Letters(document, shelf);
      lay(page, document, letters);
      Copies.make(document, copies, new FootPainter(document, letters, foot));
      letters.laidOut();
      document.setDocumentId(number(html + foot));
      document.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      int pages = document.getNumberOfPages();
      document.save(bytes);
      return new Pressed(bytes.toByteArray(), pages, remarks);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void lay(Document page, PDDocument document, Letters letters) throws IOException {
    XRLog.setLoggerImpl(new Quiet());
    List<Diagnostic> complaints = new ArrayList<>();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFastMode();
    builder.withW3cDocument(page, null);
    builder.useNamespaceHandler(new ClassesAtHand());
    builder.usePDDocument(document);
    builder.usePageSupplier((to, wide, high, n, part) -> MarkedParts.addPage(to, wide, high));
    builder.useSVGDrawer(new SvgDrawings(document, letters));
    builder.useUnicodeBidiSplitter(ReadingOrder::new);
    builder.useUnicodeBidiReorderer(new ReadingOrder.Turner());
    builder.defaultTextDirection(TextDirection.LTR);
    builder.useReplacementText(Character.toString(Letters.REPLACEMENT));
    builder.useUnicodeLineBreaker(new LineBreaks());
    builder.usePdfUaAccessibility(true);
    builder.withProducer(PRODUCER);
    builder.withDiagnosticConsumer(complaints::add);
    for (FontFamily family : letters.shelf().families()) {
      builder.useFont(
          new PDFontSupplier(letters.font(family, false)),
          family.name(),
          400,
          FontStyle.NORMAL,
          true);
      builder.useFont(
          new PDFontSupplier(letters.font(family, true)),
          family.name(),
          700,
          FontStyle.NORMAL,
          true);
    }
    try (PdfBoxRenderer renderer = begun(builder)) {
      renderer.layout();
      renderer.createPDFWithoutClosing();
    }
    complaints.stream()
        .filter(c -> c.getLevel().intValue() >= Level.WARNING.intValue())
        .findFirst()
        .ifPresent(
            c -> {
              throw new IllegalStateException("Page into PDF: " + c.getFormattedMessage());
            });
  }

  private static PdfBoxRenderer begun(PdfRendererBuilder builder) {
    synchronized (READING_STYLES) {
      return builder.buildPdfRenderer();
    }
  }

  /** What the file's identifier is made from; a clock would make two prints differ. */
  private static long number(String text) {
    CRC32 sum = new CRC32();
    sum.update(text.getBytes(StandardCharsets.UTF_8));
    return sum.getValue();
  }
}
