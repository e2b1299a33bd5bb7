package skidway.sheet;

import java.util.List;

/** One line of the legend: a symbol and what it means. */
record LegendEntry(Symbol symbol, List<String> lines) implements PanelItem {
  /** Draws a sign within a box. */
  interface Symbol {
    void draw(Drawing drawing, Box box);
  }

  private static final double SYMBOL = 9;
  private static final Type TYPE = Type.plain(3);
  private static final double TEXT = SYMBOL + 1.4;
  private static final double LINE = 3.6;

  static LegendEntry of(String meaning, Symbol symbol) {
    return new LegendEntry(symbol, Lettering.wrapped(meaning, TYPE, Panel.COLUMN - TEXT));
  }

  @Override
  public double heightMm() {
    return Math.max(4.9, lines.size() * LINE + 1.3);
  }

  @Override
  public void draw(Drawing drawing, PagePoint at) {
    drawing.open("legend-entry");
    double middle = at.y() + heightMm() / 2;
    symbol.draw(drawing, Box.around(new PagePoint(at.x() + SYMBOL / 2, middle), SYMBOL - 0.6, 3.6));
    double y = middle - LINE * (lines.size() - 1) / 2;
    for (String line : lines) {
      drawing.text(line, new PagePoint(at.x() + TEXT, y), TYPE);
      y += LINE;
    }
    drawing.close();
  }
}
