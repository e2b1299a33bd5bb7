package skidway.sheet;

import java.util.ArrayList;
import java.util.List;

/** A thin line from a thing to the label that tells about it. */
record Leader(PagePoint from, PagePoint to) {
  private static final double STEP = 1;

  double lengthMm() {
    return from.distanceTo(to);
  }

  /** Small boxes along the line, its ends not counted. */
  List<Box> boxes() {
    List<Box> all = new ArrayList<>();
    int steps = (int) Math.floor(lengthMm() / STEP);
    for (int i = 1; i < steps; i++) {
      all.add(Box.around(from.towards(to, (double) i / steps), 0.6, 0.6));
    }
    return all;
  }

  void draw(Drawing drawing) {
    drawing.line(from, to, "stroke", Palette.PAPER, "stroke-width", "1");
    drawing.line(from, to, "stroke", Palette.INK, "stroke-width", "0.3");
    drawing.circle(from, 0.7, "fill", Palette.INK);
  }
}
