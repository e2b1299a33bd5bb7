package skidway.paper;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Reads a page that is XML as well as HTML; nothing outside it is loaded. */
final class WellFormed {
  private static final String LAZILY = "http://apache.org/xml/features/dom/defer-node-expansion";

  private WellFormed() {}

  static Document parse(String html) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
      factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
      // Every element is looked at, so none is worth making later, out of a copy.
      factory.setFeature(LAZILY, false);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    } catch (SAXException | ParserConfigurationException e) {
      throw new IllegalArgumentException("The page is not well-formed.", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
