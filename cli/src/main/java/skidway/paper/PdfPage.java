package skidway.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Adds to a page what a PDF needs beyond it. */
final class PdfPage {
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
    for (Element drawing : drawings(page)) {
      drawing.setAttribute("alt", words(drawing));
      // The page layer would read it as whole numbers.
      drawing.setAttribute(SvgSize.VIEW, drawing.getAttribute("viewBox"));
      drawing.removeAttribute("viewBox");
    }
  }

  private static List<Element> drawings(Document page) {
    List<Element> drawings = new ArrayList<>();
    collect(page.getDocumentElement(), drawings);
    return drawings;
  }

  /** By hand: a list by name follows the page, and goes through all of it again and again. */
  private static void collect(Element element, List<Element> drawings) {
    if (element.getTagName().equals("svg")) {
      drawings.add(element);
    }
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        collect(child, drawings);
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
