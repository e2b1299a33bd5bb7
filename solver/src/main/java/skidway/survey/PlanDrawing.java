package skidway.survey;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,3})?");

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
    Optional<List<Point>> corners =
        switch (xml.getLocalName()) {
          case "path" -> StraightPath.corners(attribute(xml, "d"));
          case "rect" -> rectangle(xml);
          default -> pairs(attribute(xml, "points"));
        };
    Optional<List<Point>> closed =
        corners.map(PlanDrawing::withoutRepeats).filter(c -> c.size() >= 3);
    if (closed.isEmpty()) {
      problems.add(
          place,
          "a " + xml.getLocalName() + " that is no outline of straight lines",
          "three corners or more, joined by straight lines (in a path: M, L, H, V and Z)",
          "draw the house so, or tell its walls one by one");
    }
    return closed;
  }

  private static String attribute(XMLStreamReader xml, String name) {
    String value = xml.getAttributeValue(null, name);
    return value == null ? "" : value;
  }

  private static Optional<List<Point>> rectangle(XMLStreamReader xml) {
    double[] f = new double[4];
    List<String> names = List.of("x", "y", "width", "height");
    for (int i = 0; i < f.length; i++) {
      String value = attribute(xml, names.get(i));
      if (!NUMBER.matcher(value).matches() && !(i < 2 && value.isEmpty())) {
        return Optional.empty();
      }
      f[i] = value.isEmpty() ? 0 : Double.parseDouble(value);
    }
    return points(
        List.of(f[0], f[1], f[0], f[1] + f[3], f[0] + f[2], f[1] + f[3], f[0] + f[2], f[1]));
  }

  private static Optional<List<Point>> pairs(String text) {
    List<Double> numbers = new ArrayList<>();
    Matcher m = NUMBER.matcher(text);
    int end = 0;
    while (m.find()) {
      if (!text.substring(end, m.start()).matches("[\\s,]*")) {
        return Optional.empty();
      }
      numbers.add(Double.parseDouble(m.group()));
      end = m.end();
    }
    return text.substring(end).isBlank() ? points(numbers) : Optional.empty();
  }

  /** A drawing's y goes down. */
  private static Optional<List<Point>> points(List<Double> numbers) {
    if (numbers.size() % 2 != 0 || !numbers.stream().allMatch(n -> Math.abs(n) < 1e9)) {
      return Optional.empty();
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i += 2) {
      points.add(new Point(numbers.get(i), -numbers.get(i + 1)));
    }
    return Optional.of(points);
  }

  private static List<Point> withoutRepeats(List<Point> corners) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      if (!corners.get(i).equals(corners.get((i + 1) % corners.size()))) {
        kept.add(corners.get(i));
      }
    }
    return kept;
  }
}
