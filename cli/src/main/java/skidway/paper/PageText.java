package skidway.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Finds the texts that are to be seen on a page. */
final class PageText {
  private static final Set<String> UNSEEN = Set.of("style", "title");

  private PageText() {}

  static List<String> of(Document page, Foot foot) {
    List<String> texts = new ArrayList<>();
    collect(page.getDocumentElement(), texts);
    texts.add(foot.words());
    texts.add(foot.caution());
    return texts;
  }

  private static void collect(Element element, List<String> texts) {
    if (UNSEEN.contains(element.getTagName())) {
      return;
    }
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Text text) {
        texts.add(text.getData());
      } else if (n instanceof Element child) {
        collect(child, texts);
      }
    }
  }
}
