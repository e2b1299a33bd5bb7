package skidway.sheet;

/** Draws the small samples of the legend with the same inks as the map. */
final class LegendSigns {
  private static final Type CODE = Type.bold(2.8).centred().in(Palette.PAPER);

  private LegendSigns() {}

  static void stack(Drawing drawing, Box box) {
    LoadLook.fill(drawing, 1, box.corners());
    plate(drawing, box.centre());
  }

  static void card(Drawing drawing, Box box) {
    for (int i = 0; i < 2; i++) {
      Box row = Box.at(box.x0(), box.y0() + i * 1.95, box.width(), 1.3);
      drawing.rect(row, "fill", Palette.PAPER, "stroke", Palette.INK, "stroke-width", "0.3");
      for (double share : new double[] {0.2, 0.8}) {
        PagePoint foot = new PagePoint(row.x0() + row.width() * share, row.y1() + 0.32);
        drawing.rect(Box.around(foot, 0.9, 0.6), "fill", Palette.INK);
      }
    }
  }

  static void openSide(Drawing drawing, Box box) {
    drawing.rect(Box.at(box.x0(), box.y0(), box.width(), 1.1), "fill", Palette.INK);
    PagePoint left = new PagePoint(box.x0() + box.width() * 0.3, box.y0() + 2.8);
    PagePoint right = new PagePoint(box.x0() + box.width() * 0.7, box.y0() + 2.8);
    Soles.pair(drawing, left, 0, 0.8);
    Soles.pair(drawing, right, 0, 0.8);
  }

  static void rack(Drawing drawing, Box box) {
    drawing.rect(box, "fill", Palette.PAPER, "stroke", Palette.INK, "stroke-width", "0.7");
    Hatch.rack(0).draw(drawing, box.corners());
  }

  static void waiting(Drawing drawing, Box box) {
    drawing.rect(
        box,
        "fill",
        Palette.PAPER,
        "stroke",
        Palette.INK,
        "stroke-width",
        "0.6",
        "stroke-dasharray",
        "1.8 1.1");
  }

  static void fullWall(Drawing drawing, Box box) {
    drawing.rect(middle(box, 1.4), "fill", Palette.INK);
  }

  static void halfWall(Drawing drawing, Box box) {
    drawing.rect(
        middle(box, 1.1), "fill", Palette.PAPER, "stroke", Palette.INK, "stroke-width", "0.3");
  }

  static void door(Drawing drawing, Box box) {
    fullWall(drawing, box);
    Box gap = Box.around(box.centre(), 4, 1.6);
    drawing.rect(gap, "fill", Palette.DECK);
    for (double x : new double[] {gap.x0(), gap.x1()}) {
      drawing.rect(Box.around(new PagePoint(x, gap.centre().y()), 0.45, 2.6), "fill", Palette.INK);
    }
  }

  static void window(Drawing drawing, Box box) {
    fullWall(drawing, box);
    Box gap = Box.around(box.centre(), 4, 1.1);
    drawing.rect(gap, "fill", Palette.PAPER, "stroke", Palette.INK, "stroke-width", "0.3");
    drawing.rect(Box.around(gap.centre(), 4, 0.25), "fill", Palette.INK);
  }

  static void opening(Drawing drawing, Box box) {
    Box hole = Box.around(box.centre(), 5, 3.4);
    drawing.rect(hole, "fill", Palette.PAPER, "stroke", Palette.INK, "stroke-width", "0.45");
    PagePoint a = new PagePoint(hole.x0(), hole.y0());
    PagePoint b = new PagePoint(hole.x1(), hole.y1());
    PagePoint c = new PagePoint(hole.x0(), hole.y1());
    PagePoint d = new PagePoint(hole.x1(), hole.y0());
    drawing.line(a, b, "stroke", Palette.INK, "stroke-width", "0.2");
    drawing.line(c, d, "stroke", Palette.INK, "stroke-width", "0.2");
  }

  static void keepClear(Drawing drawing, Box box) {
    margin(drawing, box);
    Box core = box.grown(-0.7);
    drawing.rect(core, "fill", Palette.PAPER, "stroke", Palette.KEEP_CLEAR, "stroke-width", "0.45");
    Hatch.KEEP_CLEAR.draw(drawing, core.corners());
  }

  static void excavation(Drawing drawing, Box box) {
    margin(drawing, box);
    Excavation.drawHole(drawing, box.grown(-0.7).corners());
  }

  private static void margin(Drawing drawing, Box box) {
    drawing.rect(
        box,
        "fill",
        Palette.KEEP_CLEAR_MARGIN,
        "stroke",
        Palette.KEEP_CLEAR,
        "stroke-width",
        "0.25");
  }

  static void overheadLine(Drawing drawing, Box box) {
    drawing.rect(box, "fill", Palette.KEEP_CLEAR_MARGIN);
    double y = box.centre().y();
    Overhead.wire(drawing, new PagePoint(box.x0(), y), new PagePoint(box.x1(), y));
  }

  static void joists(Drawing drawing, Box box) {
    deck(drawing, box);
    for (double share : new double[] {0.1, 0.3, 0.5, 0.7, 0.9}) {
      double x = box.x0() + share * box.width();
      drawing.line(
          new PagePoint(x, box.y0()),
          new PagePoint(x, box.y1()),
          "stroke",
          Palette.JOIST,
          "stroke-width",
          "0.12");
    }
    drawing.line(
        new PagePoint(box.x0(), box.centre().y()),
        new PagePoint(box.x1(), box.centre().y()),
        "stroke",
        Palette.SOFT_INK,
        "stroke-width",
        "0.3",
        "stroke-dasharray",
        "3 1");
  }

  static void lane(Drawing drawing, Box box) {
    drawing.rect(box, "fill", Palette.PAPER, "stroke", Palette.LANE, "stroke-width", "0.25");
    Hatch.LANE.draw(drawing, box.corners());
  }

  static void yard(Drawing drawing, Box box) {
    drawing.rect(
        box,
        "fill",
        Palette.YARD,
        "stroke",
        Palette.SOFT_INK,
        "stroke-width",
        "0.3",
        "stroke-dasharray",
        "1.2 0.8");
  }

  static void deck(Drawing drawing, Box box) {
    drawing.rect(box, "fill", Palette.DECK, "stroke", Palette.INK, "stroke-width", "0.25");
  }

  static void besides(Drawing drawing, Box box) {
    Besides.edge(drawing, box.corners());
  }

  static void machine(Drawing drawing, Box box) {
    Stands.diamond(drawing, box.centre());
  }

  static void tapeCorner(Drawing drawing, Box box) {
    PagePoint at = new PagePoint(box.x0() + 1.6, box.centre().y());
    CornerLetters.ring(drawing, at);
    Box tab = Box.around(new PagePoint(at.x() + 3.6, at.y()), 3.2, 3.2);
    drawing.rect(tab, "fill", Palette.PAPER, "stroke", Palette.INK, "stroke-width", "0.35");
    drawing.text("A", tab.centre(), CODE.in(Palette.INK));
  }

  private static void plate(Drawing drawing, PagePoint at) {
    drawing.rect(Box.around(at, 5.4, 3.2), "rx", "0.5", "fill", Palette.INK);
    drawing.text("D3", at, CODE);
  }

  private static Box middle(Box box, double heightMm) {
    return Box.around(box.centre(), box.width(), heightMm);
  }
}
