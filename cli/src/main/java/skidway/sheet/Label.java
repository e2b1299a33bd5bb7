package skidway.sheet;

import java.util.List;

/** Lines of text that are placed and drawn as one, on a light ground so that they stay readable. */
record Label(List<String> lines, Type type) {
  private static final double PADDING = 0.5;

  Label {
    lines = List.copyOf(lines);
  }

  double width() {
    return lines.stream().mapToDouble(type::widthMm).max().orElse(0) + 2 * PADDING;
  }

  double height() {
    return lines.size() * type.sizeMm() * Lettering.LINE + PADDING;
  }

  void draw(Drawing drawing, Box box) {
    drawing.rect(box, "fill", Palette.PAPER, "fill-opacity", "0.82", "rx", "0.6");
    double step = type.sizeMm() * Lettering.LINE;
    double y = box.centre().y() - step * (lines.size() - 1) / 2;
    for (String line : lines) {
      drawing.text(line, new PagePoint(box.centre().x(), y), type.centred());
      y += step;
    }
  }
}
