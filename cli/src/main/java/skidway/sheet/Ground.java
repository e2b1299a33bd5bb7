package skidway.sheet;

import java.util.List;
import skidway.layout.ExcavationSetback;
import skidway.plan.Task;
import skidway.rules.Settings;
import skidway.site.KeepClear;
import skidway.site.Lane;
import skidway.site.Site;
import skidway.site.Yard;

/** Draws the ground: boundary, yards, lanes and what is kept clear. */
final class Ground {
  /** The edge of a keep-clear's margin, mm; it must show where the ground's colour does not. */
  private static final double RIM = 0.25;

  private Ground() {}

  static void draw(Drawing drawing, Task task, Frame frame) {
    Site site = task.site();
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
    Overhead.drawBands(drawing, task, frame);
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
    site.keepClears().forEach(area -> keepClear(drawing, area, task.settings(), frame));
    drawing.close();
  }

  private static void keepClear(Drawing drawing, KeepClear area, Settings settings, Frame frame) {
    List<PagePoint> corners = frame.at(area.outline());
    double marginM = area.excavation() ? ExcavationSetback.metres(area, settings) : area.marginM();
    drawing.open("keep-clear").hint(area.id() + ": " + area.reason());
    if (marginM > 0) {
      round(drawing, corners, Palette.KEEP_CLEAR, 2 * frame.mm(marginM) + RIM);
      round(drawing, corners, Palette.KEEP_CLEAR_MARGIN, 2 * frame.mm(marginM) - RIM);
    }
    if (area.excavation()) {
      Excavation.drawHole(drawing, corners);
    } else {
      drawing.polygon(
          corners, "fill", Palette.PAPER, "stroke", Palette.KEEP_CLEAR, "stroke-width", "0.45");
      Hatch.KEEP_CLEAR.draw(drawing, corners);
    }
    drawing.close();
  }

  /** The polygon and all within half this width of its edge. */
  private static void round(
      Drawing drawing, List<PagePoint> corners, String colour, double widthMm) {
    drawing.polygon(
        corners,
        "fill",
        "none",
        "stroke",
        colour,
        "stroke-width",
        Math.max(0, widthMm),
        "stroke-linejoin",
        "round");
  }
}
