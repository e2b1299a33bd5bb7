package skidway.sheet;

/**
 * Draws where to cut a sheet into tags: ticks in the margin for a long blade, crosses where cuts
 * meet inside.
 */
final class CutMarks {
  private static final double TICK_MM = 4;
  private static final double ARM_MM = 2.5;

  private CutMarks() {}

  static void write(Markup page, TagSheet sheet) {
    double width = sheet.paper().widthMm();
    double height = sheet.paper().heightMm();
    StringBuilder path = new StringBuilder();
    for (int column = 0; column <= sheet.columns(); column++) {
      double x = TagSheet.MARGIN_MM + column * sheet.tagWidthMm();
      line(path, x, TagSheet.MARGIN_MM - TICK_MM, x, TagSheet.MARGIN_MM);
      line(path, x, height - TagSheet.MARGIN_MM, x, height - TagSheet.MARGIN_MM + TICK_MM);
      for (int row = 0; row <= sheet.rows(); row++) {
        double y = TagSheet.MARGIN_MM + row * sheet.tagHeightMm();
        boolean inside = row > 0 && row < sheet.rows();
        if (inside && column > 0 && column < sheet.columns()) {
          line(path, x - ARM_MM, y, x + ARM_MM, y);
          line(path, x, y - ARM_MM, x, y + ARM_MM);
        }
        if (column == 0) {
          line(path, TagSheet.MARGIN_MM - TICK_MM, y, TagSheet.MARGIN_MM, y);
          line(path, width - TagSheet.MARGIN_MM, y, width - TagSheet.MARGIN_MM + TICK_MM, y);
        }
      }
    }
    String box = "0 0 " + Numbers.of(width) + " " + Numbers.of(height);
    page.open("svg", "xmlns", "http://www.w3.org/2000/svg", "class", "cuts", "viewBox", box);
    page.empty("path", "d", path, "stroke", "#000", "stroke-width", "0.3", "fill", "none");
    page.close().line();
  }

  private static void line(StringBuilder path, double x0, double y0, double x1, double y1) {
    path.append('M').append(Numbers.of(x0)).append(' ').append(Numbers.of(y0));
    path.append('L').append(Numbers.of(x1)).append(' ').append(Numbers.of(y1));
  }
}
