package skidway.sheet;

import skidway.site.KeepClear;
import skidway.site.Lane;
import skidway.site.Site;
import skidway.site.Yard;

/** Draws the ground: boundary, yards, lanes and what is kept clear. */
final class Ground {
  private Ground() {}

  static void draw(Drawing drawing, Site site, Frame frame) {
    drawing.open("ground");
    drawing.polygon(
        frame.at(site.boundary()),
        "fill",
        "none",
        "stroke",
        Palette.SOFT_INK,
        "stroke-width",
        "0.4",
        "stroke-dasharray",
        "6 1.4 1 1.4");
    for (Yard yard : site.yards()) {
      drawing.polygon(
          frame.at(yard.outline()),
          "fill",
          Palette.YARD,
          "stroke",
          Palette.SOFT_INK,
          "stroke-width",
          "0.3",
          "stroke-dasharray",
          "1.2 0.8");
    }
    for (Lane lane : site.lanes()) {
      drawing.polygon(
          frame.at(Band.of(lane)),
          "fill",
          Palette.PAPER,
          "stroke",
          Palette.LANE,
          "stroke-width",
          "0.25");
      Hatch.LANE.draw(drawing, frame.at(Band.of(lane)));
    }
    site.keepClears().forEach(area -> keepClear(drawing, area, frame));
    drawing.close();
  }

  private static void keepClear(Drawing drawing, KeepClear area, Frame frame) {
    drawing.open("keep-clear").hint(area.id() + ": " + area.reason());
    drawing.polygon(
        frame.at(area.outline()),
        "fill",
        "none",
        "stroke",
        Palette.KEEP_CLEAR_MARGIN,
        "stroke-width",
        2 * frame.mm(area.marginM()),
        "stroke-linejoin",
        "round");
    drawing.polygon(
        frame.at(area.outline()),
        "fill",
        Palette.PAPER,
        "stroke",
        Palette.KEEP_CLEAR,
        "stroke-width",
        "0.45");
    Hatch.KEEP_CLEAR.draw(drawing, frame.at(area.outline()));
    drawing.close();
  }
}
