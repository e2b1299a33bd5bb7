package skidway.sheet;

import java.util.List;

/**
 * How bundles of one load are filled: a colour, and a pattern that still tells loads apart on a
 * black-and-white print. The load's number stands beside it, so looks may come round again.
 */
enum LoadLook {
  PLAIN("#66bbeb", Hatch.NONE),
  SLANTED("#e8a819", Hatch.lines(1.3, 0.24, Palette.INK, -45.0)),
  DOTTED("#99d8c7", Hatch.dots(1.3, 0.6)),
  CROSSED("#d186af", Hatch.lines(1.5, 0.22, Palette.INK, 45.0, -45.0)),
  UPRIGHT("#f1e654", Hatch.lines(1.2, 0.24, Palette.INK, 90.0)),
  LEVEL("#3f95c5", Hatch.lines(1.0, 0.24, Palette.INK, 0.0));

  private final String colour;
  private final Hatch hatch;

  LoadLook(String colour, Hatch hatch) {
    this.colour = colour;
    this.hatch = hatch;
  }

  String colour() {
    return colour;
  }

  /**
   * Fills an area as the load that comes as the n-th, starting with 1; 0 is a load nobody knows and
   * stays white.
   */
  static void fill(Drawing drawing, int turn, List<PagePoint> polygon) {
    if (turn == 0) {
      rim(drawing, Palette.PAPER, polygon);
      return;
    }
    LoadLook look = values()[(turn - 1) % values().length];
    rim(drawing, look.colour, polygon);
    look.hatch.draw(drawing, polygon);
  }

  private static void rim(Drawing drawing, String fill, List<PagePoint> polygon) {
    drawing.polygon(polygon, "fill", fill, "stroke", Palette.INK, "stroke-width", "0.35");
  }
}
