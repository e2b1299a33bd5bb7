package skidway.sheet;

import java.util.List;

/** Writes one tag: spot and tier as large as the other lines leave room for, and the code. */
final class TagArt {
  /** Capitals are this much of a font's size high, with a little air. */
  private static final double CODE_LINE = 0.92;

  private static final double GAP_MM = 2;

  /** Size of the lines that tell which end it is, in units of the sheet. */
  private static final double END = 4;

  private final Markup page;
  private final TagSheet sheet;

  TagArt(Markup page, TagSheet sheet) {
    this.page = page;
    this.sheet = sheet;
  }

  void write(Tag tag, RunningHead head, int end, boolean broken) {
    List<TagLine> lines = new TagLines(sheet).of(tag, head, broken);
    double width = sheet.innerWidthMm();
    double below = lines.stream().mapToDouble(line -> line.heightMm(width)).sum();
    double top = Math.max(24, sheet.innerHeightMm() - below);
    // Many cautions leave less room; the code shrinks before a caution is cut off.
    double check = 3 * sheet.unitMm();
    double qr = Math.min(sheet.qrMm(), top - check - 0.5);
    String kind = sheet.standing() ? "tag standing" : "tag";
    page.open("article", "class", kind, "style", mm("height", sheet.tagHeightMm()));
    page.open("div", "class", "top", "style", mm("height", top));
    if (sheet.standing()) {
      code(tag.place(), width, Math.max(16, top - qr - check - GAP_MM));
      page.open("div", "class", "row");
      page.open("div", "class", "where");
      level(tag.place(), width - qr - GAP_MM, 11);
      end(tag.place(), end, width - qr - GAP_MM);
      page.close();
      qr(tag, head, end, qr, check);
      page.close();
    } else {
      double tier = Math.min(7 * sheet.unitMm(), top * 0.2);
      page.open("div", "class", "where");
      code(tag.place(), width - qr - GAP_MM, top - tier * 1.2 - 2 * END * sheet.unitMm() * 1.25);
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
    for (String line : TagEnd.lines(place, end, sheet.standing())) {
      double fits = widthMm / Lettering.widthMm(line, 1, true);
      String size = mm("font-size", Math.min(fits, END * sheet.unitMm()));
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
