package skidway.sheet;

import java.util.List;

/** Fills columns of a fixed width with items, top to bottom, then the next column. */
record Panel(List<PanelItem> items) {
  static final double COLUMN = 54;
  static final double GUTTER = 4;

  /** How many columns of this height the items take. */
  int columns(double heightMm) {
    int columns = 1;
    double used = 0;
    for (PanelItem item : items) {
      if (used > 0 && used + item.heightMm() > heightMm) {
        columns++;
        used = 0;
      }
      used += item.heightMm();
    }
    return columns;
  }

  static double widthMm(int columns) {
    return columns * (COLUMN + GUTTER) - GUTTER;
  }

  void draw(Drawing drawing, Box box) {
    drawing.open("panel");
    double x = box.x0();
    double y = box.y0();
    for (PanelItem item : items) {
      if (y > box.y0() && y + item.heightMm() > box.y1() + 1e-6) {
        x += COLUMN + GUTTER;
        y = box.y0();
      }
      item.draw(drawing, new PagePoint(x, y));
      y += item.heightMm();
    }
    drawing.close();
  }
}
