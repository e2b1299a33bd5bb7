package skidway.paper;

import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.w3c.dom.Text;

/** Adds to a page what a PDF needs beyond it. */
final class PdfPage {
  private static final Set<String> UNBROKEN = Set.of("style", "title", "svg");

  /** As long as the longest words of our own, then places for breaks closer by. */
  private static final Pattern LONG_WORD =
      Pattern.compile("(?<!\\S)\\S{16}(?=\\S)|(?<=\\S{16})\\G\\S{8}(?=\\S)");

  private PdfPage() {}

  /** The fonts the page is set in, and what it is about, which programs that read aloud ask for. */
  static void complete(Document page, FontShelf shelf) {
    String names =
        shelf.families().stream().map(f -> "'" + f.name() + "'").collect(Collectors.joining(", "));
    Element style = page.createElement("style");
    style.setTextContent("* { font-family: " + names + "; }");
    Element about = page.createElement("meta");
    about.setAttribute("name", "subject");
    about.setAttribute("content", page.getElementsByTagName("title").item(0).getTextContent());
    Element head = (Element) page.getElementsByTagName("head").item(0);
    head.appendChild(style);
    head.appendChild(about);
    breakLongWords(page.getDocumentElement());
    NodeList drawings = page.getElementsByTagName("svg");
    for (int i = 0; i < drawings.getLength(); i++) {
      Element drawing = (Element) drawings.item(i);
      drawing.setAttribute("alt", words(drawing));
      // The page layer would read it as whole numbers.
      drawing.setAttribute(SvgSize.VIEW, drawing.getAttribute("viewBox"));
      drawing.removeAttribute("viewBox");
    }
  }

  /** Lets a word that no column holds go on in the next line; the places do not show. */
  private static void breakLongWords(Element element) {
    if (UNBROKEN.contains(element.getTagName())) {
      return;
    }
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Text text) {
        text.setData(LONG_WORD.matcher(text.getData()).replaceAll("$0\u200B"));
      } else if (n instanceof Element child) {
        breakLongWords(child);
      }
    }
  }

  /** What a drawing is, for those who do not see it: its own words, else the letters in it. */
  private static String words(Element drawing) {
    if (drawing.hasAttribute("aria-label")) {
      return drawing.getAttribute("aria-label");
    }
    NodeList titles = drawing.getElementsByTagName("title");
    String words =
        titles.getLength() > 0 ? titles.item(0).getTextContent() : drawing.getTextContent();
    return words.isBlank() ? "drawing" : words.strip();
  }
}
