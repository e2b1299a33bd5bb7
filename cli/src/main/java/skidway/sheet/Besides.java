package skidway.sheet;

import java.util.List;

/** Draws the edges of what lies beside the deck or yard of a map: it has a page of its own. */
final class Besides {
  private Besides() {}

  static void draw(Drawing drawing, MapView view, Frame frame) {
    drawing.open("besides");
    view.besides().forEach(outline -> edge(drawing, frame.at(outline)));
    drawing.close();
  }

  static void edge(Drawing drawing, List<PagePoint> corners) {
    drawing.polygon(corners, "fill", "none", "stroke", Palette.LANE, "stroke-width", "0.2");
  }
}
