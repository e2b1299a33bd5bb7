package skidway.sheet;

import java.util.List;

/** Writes one tag: spot and tier as large as the other lines leave room for, and the code. */
final class TagArt {
  /** Capitals are this much of a font's size high, with a little air. */
  private static final double CODE_LINE = 0.92;

  private static final double GAP_MM = 2;

  /** Size of the lines that tell which end it is, in units of the format. */
  private static final double END = 4;

  private final Markup page;
  private final TagFormat format;
  private final String defers;

  /**
   * @param defers what the figures do not replace
   */
  TagArt(Markup page, TagFormat format, String defers) {
    this.page = page;
    this.format = format;
    this.defers = defers;
  }

  void write(Tag tag, RunningHead head, int end, boolean broken) {
    List<TagLine> lines = new TagLines(format, defers).of(tag, head, broken);
    double width = format.innerWidthMm();
    double below = lines.stream().mapToDouble(line -> line.heightMm(width)).sum();
    double top = Math.max(24, format.innerHeightMm() - below);
    // Many cautions leave less room; the code shrinks before a caution is cut off.
    double check = 3 * format.unitMm();
    double qr = Math.min(format.qrMm(), top - check - 0.5);
    String kind = format.standing() ? "tag standing" : "tag";
    page.open("article", "class", kind, "style", mm("height", format.tagHeightMm()));
    page.open("div", "class", "top", "style", mm("height", top));
    if (format.standing()) {
      code(tag.place(), width, Math.max(16, top - qr - check - GAP_MM));
      page.open("div", "class", "row");
      page.open("div", "class", "where", "style", mm("width", width - qr - GAP_MM));
      level(tag.place(), width - qr - GAP_MM, 11);
      end(tag.place(), end, width - qr - GAP_MM);
      page.close();
      qr(tag, head, end, qr, check);
      page.close();
    } else {
      double tier = Math.min(7 * format.unitMm(), top * 0.2);
      page.open("div", "class", "where", "style", mm("width", width - qr - GAP_MM));
      code(tag.place(), width - qr - GAP_MM, top - tier * 1.2 - 2 * END * format.unitMm() * 1.25);
      level(tag.place(), width - qr - GAP_MM, tier);
      end(tag.place(), end, width - qr - GAP_MM);
      page.close();
      qr(tag, head, end, qr, check);
    }
    page.close().line();
    for (TagLine line : lines) {
      String size = mm("font-size", line.sizeMm());
      page.leaf("p", line.text(), "class", line.kind(), "style", size, "dir", "auto");
    }
    page.close().line();
  }

  private void code(TagPlace place, double widthMm, double heightMm) {
    double wide = Lettering.widthMm(place.code(), 1, true);
    double least = heightMm / CODE_LINE / 3;
    double size = Math.max(least, Math.min(heightMm / CODE_LINE, widthMm / wide));
    String shown = Lettering.fitted(place.code(), size, true, 2 * widthMm * 0.9);
    page.leaf("h2", shown, "class", "code", "style", mm("font-size", size), "dir", "auto");
  }

  private void level(TagPlace place, double widthMm, double mostMm) {
    double wide = Lettering.widthMm(place.level(), 1, true);
    String size = mm("font-size", Math.min(mostMm, widthMm / wide));
    page.leaf("p", place.level(), "class", "level", "style", size);
  }

  private void end(TagPlace place, int end, double widthMm) {
    for (String line : TagEnd.lines(place, end, format.standing())) {
      double fits = widthMm / Lettering.widthMm(line, 1, true);
      String size = mm("font-size", Math.min(fits, END * format.unitMm()));
      page.leaf("p", line, "class", "end", "style", size);
    }
  }

  private void qr(Tag tag, RunningHead head, int end, double edgeMm, double checkMm) {
    TagText text = TagText.of(head, tag, end);
    page.open("div", "class", "qr", "style", mm("width", edgeMm));
    QrCode.write(page, text.written(), "Code: " + text.written().replace("\n", "; "));
    page.leaf("p", "check " + text.check(), "style", mm("font-size", checkMm * 0.8));
    page.close();
  }

  private static String mm(String property, double value) {
    return property + ":" + Numbers.of(value) + "mm";
  }
}
