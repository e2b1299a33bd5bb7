package skidway.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

class MarkedPartsTest {
  private static final int ROWS = 20;

  /** Each row has two texts and the backgrounds of the row, two cells and what is in them. */
  @Test
  void textsAreNotedOneByOneAndBackgroundsOnceForAll() throws IOException {
    String rows = "<tr><td><b>mark</b></td><td>wall</td></tr>".repeat(ROWS);
    String page =
        "<!DOCTYPE html>\n<html lang=\"en\"><head><title>T</title><style>"
            + "td { border: 1mm solid #000; background: #eee; }</style></head><body><table>"
            + rows
            + "</table></body></html>";
    Press press = Press.searching(FontSearch.with(Optional.empty(), List.of()));
    byte[] pdf = press.press(page, new Foot("Job", "", 9), 1).bytes();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      COSDictionary notes =
          document.getPage(0).getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
      TreeSet<Integer> texts = new TreeSet<>();
      int silent = 0;
      for (COSBase note : notes.getValues()) {
        // Within the page: an object of the file would be a reference.
        COSDictionary about = (COSDictionary) note;
        if (about.containsKey(COSName.MCID)) {
          texts.add(about.getInt(COSName.MCID));
        } else {
          assertThat(about.getNameAsString(COSName.TYPE)).isEqualTo("Layout");
          silent++;
        }
      }
      assertThat(silent).isEqualTo(1);
      assertThat(texts).hasSize(2 * ROWS);
    }
  }
}
