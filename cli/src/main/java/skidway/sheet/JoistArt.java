package skidway.sheet;

import java.util.List;
import skidway.site.Deck;
import skidway.site.Joists;
import skidway.site.Point;

/** Draws the joists of a deck and what they lie on, faintly: they are a ground to read on. */
final class JoistArt {
  /** Nearer to each other on paper, joists would run together. */
  private static final double LEAST_MM = 1.6;

  private JoistArt() {}

  static void draw(Drawing drawing, Deck deck, Frame frame) {
    deck.joists().ifPresent(joists -> draw(drawing, deck, joists, frame));
  }

  private static void draw(Drawing drawing, Deck deck, Joists joists, Frame frame) {
    List<PagePoint> polygon = frame.at(deck.outline());
    double alongDeg = -joists.directionDeg();
    double spacingMm = frame.mm(joists.spacingM());
    int step = (int) Math.max(1, Math.ceil(LEAST_MM / spacingMm));
    PagePoint first = frame.at(joists.first());
    String path = Scanlines.through(first, polygon, alongDeg, step * spacingMm);
    if (!path.isEmpty()) {
      drawing.path(path, "stroke", Palette.JOIST, "stroke-width", "0.12");
    }
    for (Point support : joists.supports()) {
      String bearing = Scanlines.through(frame.at(support), polygon, alongDeg + 90, 1e4);
      if (!bearing.isEmpty()) {
        drawing.path(
            bearing, "stroke", Palette.SOFT_INK, "stroke-width", "0.3", "stroke-dasharray", "3 1");
      }
    }
  }
}
