package skidway.sheet;

import java.util.Locale;
import skidway.units.UnitSystem;

/** A ruler in the job's unit, and where north is. */
record ScaleBar(Scale scale, UnitSystem units, double northDeg) implements PanelItem {
  private static final double METRES_PER_FOOT = 0.3048;
  private static final double MOST = 34;
  private static final long[] STEPS = {1, 2, 5};
  private static final double NORTH = 5;

  @Override
  public double heightMm() {
    return 17;
  }

  @Override
  public void draw(Drawing drawing, PagePoint at) {
    drawing.open("scale-bar");
    long step = step();
    double partMm = scale.mm(step * unitM());
    double y = at.y() + 9;
    Type figure = Type.plain(3).centred();
    for (int i = 0; i < 4; i++) {
      drawing.rect(
          Box.at(at.x() + 1 + i * partMm, y, partMm, 1.7),
          "fill",
          i % 2 == 0 ? Palette.INK : Palette.PAPER,
          "stroke",
          Palette.INK,
          "stroke-width",
          "0.3");
    }
    for (int i = 0; i <= 4; i += 2) {
      String text = String.format(Locale.ROOT, "%d", i * step);
      drawing.text(text, new PagePoint(at.x() + 1.4 + i * partMm, y + 4), figure);
    }
    String unit = units == UnitSystem.US ? "feet" : "metres";
    String words = scale.words() + ", " + unit;
    drawing.text(words, new PagePoint(at.x() + 0.6, y - 3.2), Type.bold(3.2));
    north(drawing, new PagePoint(at.x() + Panel.COLUMN - 10, at.y() + 9.5));
    drawing.close();
  }

  private double unitM() {
    return units == UnitSystem.US ? METRES_PER_FOOT : 1;
  }

  private long step() {
    long best = 1;
    for (long tens = 1; tens <= 1_000_000; tens *= 10) {
      for (long step : STEPS) {
        if (scale.mm(4 * step * tens * unitM()) <= MOST) {
          best = step * tens;
        }
      }
    }
    return best;
  }

  private void north(Drawing drawing, PagePoint middle) {
    drawing.open("north");
    String needle = "M0," + -NORTH + " L2.2," + 0.6 * NORTH + " L0," + 0.3 * NORTH + " Z";
    String half = "M0," + -NORTH + " L-2.2," + 0.6 * NORTH + " L0," + 0.3 * NORTH + " Z";
    String turn =
        "translate("
            + Numbers.of(middle.x())
            + " "
            + Numbers.of(middle.y())
            + ") rotate("
            + Numbers.of(90 - northDeg)
            + ")";
    drawing.path(needle, "fill", Palette.INK, "transform", turn);
    drawing.path(
        half,
        "fill",
        Palette.PAPER,
        "stroke",
        Palette.INK,
        "stroke-width",
        "0.3",
        "transform",
        turn);
    double angle = Math.toRadians(northDeg);
    double away = NORTH + 2.2;
    PagePoint tip =
        new PagePoint(middle.x() + Math.cos(angle) * away, middle.y() - Math.sin(angle) * away);
    drawing.text("N", tip, Type.bold(3.2).centred());
    drawing.close();
  }
}
