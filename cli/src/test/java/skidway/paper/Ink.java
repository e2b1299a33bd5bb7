package skidway.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where each upright letter of a PDF stands, to find what is cut off or printed over. */
public final class Ink extends PDFTextStripper {
  private static final double POINTS_PER_MM = 72 / 25.4;

  /** What of a letter's size surely is ink: about the height of an x. */
  private static final double INK_HIGH = 0.5;

  /** What of the smaller of two letters may lie under the other, for italics and close pairs. */
  private static final double TOUCH = 0.25;

  private final List<Letter> letters = new ArrayList<>();

  /** A letter on its line, from the upper left corner of its page, in points. */
  private record Letter(int page, String text, double x, double wide, double y, double high) {
    private double shared(Letter o) {
      double across = Math.min(x + wide, o.x + o.wide) - Math.max(x, o.x);
      double along = Math.min(y, o.y) - Math.max(y - high, o.y - o.high);
      double smaller = Math.min(wide * high, o.wide * o.high);
      return across > 0 && along > 0 && smaller > 0 ? across * along / smaller : 0;
    }

    /** A letter with a halo is printed twice. */
    private boolean twin(Letter o) {
      return text.equals(o.text) && Math.hypot(x - o.x, y - o.y) < 0.1 * high;
    }

    private String told() {
      return String.format(Locale.ROOT, "page %d: %s at %.1f, %.1f", page, text, x, y);
    }
  }

  private Ink() {}

  /** The letters of a PDF. */
  public static Ink of(byte[] pdf) {
    Ink ink = new Ink();
    ink.setSuppressDuplicateOverlappingText(false);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      ink.getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return ink;
  }

  @Override
  protected void processTextPosition(TextPosition at) {
    if (at.getDir() == 0 && !at.getUnicode().isBlank()) {
      double high = at.getFontSizeInPt() * INK_HIGH;
      letters.add(
          new Letter(
              getCurrentPageNo(), at.getUnicode(), at.getX(), at.getWidth(), at.getY(), high));
    }
    super.processTextPosition(at);
  }

  /** Letters that reach into a page's sides, where they are cut off. */
  public List<String> beyond(double sidesMm, double pageWideMm) {
    double least = sidesMm * POINTS_PER_MM - 0.5;
    double most = (pageWideMm - sidesMm) * POINTS_PER_MM + 0.5;
    return letters.stream()
        .filter(letter -> letter.x < least || letter.x + letter.wide > most)
        .map(Letter::told)
        .toList();
  }

  /** Letters printed over others. */
  public List<String> over() {
    Map<Integer, List<Letter>> pages =
        letters.stream()
            .sorted(Comparator.comparingDouble(Letter::y))
            .collect(Collectors.groupingBy(Letter::page, TreeMap::new, Collectors.toList()));
    return pages.values().stream().flatMap(page -> over(page).stream()).toList();
  }

  /** On one page, its letters from the top down. */
  private static List<String> over(List<Letter> down) {
    double highest = down.stream().mapToDouble(Letter::high).max().orElse(0);
    List<String> found = new ArrayList<>();
    for (int i = 0; i < down.size(); i++) {
      Letter a = down.get(i);
      for (int j = i + 1; j < down.size() && down.get(j).y - highest < a.y; j++) {
        Letter b = down.get(j);
        if (a.shared(b) > TOUCH && !a.twin(b)) {
          found.add(a.told() + " and " + b.told());
        }
      }
    }
    return found;
  }
}
