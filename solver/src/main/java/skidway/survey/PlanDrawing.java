package skidway.survey;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import skidway.job.Place;
import skidway.job.Problems;
import skidway.job.Quote;
import skidway.job.SourceFile;
import skidway.site.Point;

/**
 * Finds the outline of a house in a drawing (SVG): one closed shape of straight lines, that is
 * {@code polygon}, {@code polyline}, {@code rect} or {@code path}. Nothing that the drawing refers
 * to is ever opened.
 */
final class PlanDrawing {
  private static final XMLInputFactory XML = plainXml();
  private static final List<String> SHAPES = List.of("polygon", "polyline", "path", "rect");

  /** A round tower drawn as lines has fewer (assumption). */
  private static final int MOST_CORNERS = 200;

  private final SourceFile file;
  private final Problems problems;

  PlanDrawing(SourceFile file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  private static XMLInputFactory plainXml() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    return factory;
  }

  /**
   * The corners in the drawing's units, y upwards; empty after a problem.
   *
   * @param shape its id; an empty text when the drawing holds one shape alone
   */
  Optional<List<Point>> corners(String shape) {
    List<Optional<List<Point>>> found = new ArrayList<>();
    int before = problems.count();
    try {
      XMLStreamReader xml = XML.createXMLStreamReader(new StringReader(file.text()));
      int moved = 0;
      while (xml.hasNext()) {
        int event = xml.next();
        if (event == XMLStreamConstants.START_ELEMENT) {
          boolean moves = xml.getAttributeValue(null, "transform") != null;
          moved += moved > 0 || moves ? 1 : 0;
          if (isWanted(xml, shape)) {
            found.add(corners(xml, moved > 0));
          }
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          moved -= moved > 0 ? 1 : 0;
        }
      }
      xml.close();
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
      int column = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getColumnNumber());
      problems.add(
          file.at(line, column), "a drawing that is not XML", "a drawing is SVG", "save it as SVG");
      return Optional.empty();
    }
    if (problems.count() == before && found.size() != 1) {
      problems.add(
          file.whole(),
          found.isEmpty() ? "no outline" + named(shape) : found.size() + " outlines" + named(shape),
          "one closed shape of straight lines is the house: " + String.join(", ", SHAPES),
          "name it by its id, as in: plan house.svg shape walls unit 1 mm");
    }
    return problems.count() > before ? Optional.empty() : found.get(0);
  }

  private static String named(String shape) {
    return shape.isEmpty() ? "" : " called " + Quote.found(shape);
  }

  private static boolean isWanted(XMLStreamReader xml, String shape) {
    String id = xml.getAttributeValue(null, "id");
    return SHAPES.contains(xml.getLocalName()) && (shape.isEmpty() || shape.equals(id));
  }

  private Optional<List<Point>> corners(XMLStreamReader xml, boolean moved) {
    Place place =
        file.at(
            xml.getLocation().getLineNumber(), Math.max(1, xml.getLocation().getColumnNumber()));
    if (moved) {
      problems.add(
          place,
          "an outline that is moved by \"transform\"",
          "its corners are where its figures say",
          "ungroup the drawing, or apply the transform where it was drawn");
      return Optional.empty();
    }
    String kind = xml.getLocalName();
    Optional<DrawnOutline> outline =
        switch (kind) {
          case "path" -> StraightPath.outline(attribute(xml, "d"));
          case "rect" -> rectangle(xml);
          default -> DrawnNumbers.outline(attribute(xml, "points"), kind.equals("polygon"));
        };
    int before = problems.count();
    judge(kind, place, outline);
    return problems.count() > before ? Optional.empty() : outline.map(DrawnOutline::ring);
  }

  private void judge(String kind, Place place, Optional<DrawnOutline> outline) {
    if (outline.isPresent() && outline.get().isOpen()) {
      problems.add(
          place,
          String.format(
              Locale.ROOT,
              "a %s whose ends lie %.3g of the drawing's units apart",
              kind,
              outline.get().gap()),
          String.format(
              Locale.ROOT,
              "an outline comes back to its beginning, to 1 : %.0f of its length",
              Closing.USUAL_LEAST),
          "draw the last side, or close it: a polygon, or Z at a path's end");
      return;
    }
    int corners = outline.map(o -> o.ring().size()).orElse(0);
    if (corners > MOST_CORNERS) {
      problems.add(
          place,
          "a " + kind + " with " + corners + " corners",
          "a house has at most " + MOST_CORNERS + ", joined by straight lines",
          "draw its walls alone, each as one line");
    } else if (corners < 3) {
      problems.add(
          place,
          "a " + kind + " that is no outline of straight lines",
          "three corners or more, joined by straight lines (in a path: M, L, H, V and Z)",
          "draw the house so, or tell its walls one by one");
    }
  }

  private static String attribute(XMLStreamReader xml, String name) {
    String value = xml.getAttributeValue(null, name);
    return value == null ? "" : value;
  }

  private static Optional<DrawnOutline> rectangle(XMLStreamReader xml) {
    return DrawnNumbers.rectangle(
        attribute(xml, "x"),
        attribute(xml, "y"),
        attribute(xml, "width"),
        attribute(xml, "height"));
  }
}
