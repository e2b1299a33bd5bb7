package skidway.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * Puts whole copies of a document one behind the other. What is on a page is in the file once;
 * programs that read aloud read the first copy.
 */
final class Copies {
  private Copies() {}

  static void make(PDDocument document, int copies, FootPainter foot) throws IOException {
    List<PDPage> first = new ArrayList<>();
    document.getPages().forEach(first::add);
    List<List<PDPage>> all = new ArrayList<>();
    all.add(first);
    for (int copy = 2; copy <= copies; copy++) {
      all.add(first.stream().map(Copies::again).toList());
    }
    for (int copy = 1; copy <= copies; copy++) {
      String words = copies == 1 ? "" : "copy " + copy + " of " + copies;
      List<PDPage> pages = all.get(copy - 1);
      for (int i = 0; i < pages.size(); i++) {
        if (copy > 1) {
          document.addPage(pages.get(i));
        }
        foot.paint(pages.get(i), i + 1, pages.size(), words);
      }
    }
  }

  private static PDPage again(PDPage page) {
    COSDictionary copy = new COSDictionary(page.getCOSObject());
    copy.removeItem(COSName.PARENT);
    copy.removeItem(COSName.ANNOTS);
    copy.removeItem(COSName.STRUCT_PARENTS);
    COSBase content = page.getCOSObject().getDictionaryObject(COSName.CONTENTS);
    COSArray own = new COSArray();
    if (content instanceof COSArray parts) {
      own.addAll(parts);
    } else if (content != null) {
      own.add(content);
    }
    copy.setItem(COSName.CONTENTS, own);
    return new PDPage(copy);
  }
}
