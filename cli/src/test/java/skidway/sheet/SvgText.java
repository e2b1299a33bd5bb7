package skidway.sheet;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * A text found in a finished drawing, with the upright box it takes, worked out anew from what the
 * drawing says.
 */
record SvgText(String text, Box box) {
  static Document parse(String xml) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
  }

  static List<Element> elements(Document document, String tag) {
    NodeList found = document.getElementsByTagName(tag);
    return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i)).toList();
  }

  static List<SvgText> all(Document document) {
    List<SvgText> texts = new ArrayList<>();
    for (Element element : elements(document, "text")) {
      double size = number(element, "font-size");
      boolean bold = element.getAttribute("font-weight").equals("700");
      double width = Lettering.widthMm(element.getTextContent(), size, bold);
      double x =
          switch (element.getAttribute("text-anchor")) {
            case "middle" -> number(element, "x") - width / 2;
            case "end" -> number(element, "x") - width;
            default -> number(element, "x");
          };
      // From the line the letters stand on: capitals reach 0.72 of the size up, tails 0.2 down.
      double y = number(element, "y");
      Box level = new Box(x, y - 0.72 * size, x + width, y + 0.2 * size);
      texts.add(new SvgText(element.getTextContent(), turned(level, transform(element))));
    }
    return texts;
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }

  private static String transform(Element element) {
    String all = element.getAttribute("transform");
    Node up = element.getParentNode();
    while (up instanceof Element parent) {
      all = parent.getAttribute("transform") + all;
      up = parent.getParentNode();
    }
    return all;
  }

  private static Box turned(Box box, String transform) {
    if (transform.isEmpty()) {
      return box;
    }
    String[] words = transform.replace("rotate(", "").replace(")", "").split(" ", -1);
    double angle = Math.toRadians(Double.parseDouble(words[0]));
    double cx = Double.parseDouble(words[1]);
    double cy = Double.parseDouble(words[2]);
    return Box.of(
        box.corners().stream()
            .map(
                p ->
                    new PagePoint(
                        cx + (p.x() - cx) * Math.cos(angle) - (p.y() - cy) * Math.sin(angle),
                        cy + (p.x() - cx) * Math.sin(angle) + (p.y() - cy) * Math.cos(angle)))
            .toList());
  }
}
