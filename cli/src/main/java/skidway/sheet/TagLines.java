package skidway.sheet;

import java.util.ArrayList;
import java.util.List;

/** Chooses what stands on a tag below spot, tier and code, what matters at the lift first. */
final class TagLines {
  private static final String DEFERS =
      "Helps to plan. Machine's chart, floor's designer, local codes govern.";
  private static final String DEFERS_BY_HAND =
      "Helps to plan. Floor's designer, local codes govern.";
  static final String BROKEN = "This plan breaks rules. Do not unload by it.";

  private final TagFormat format;
  private final double unitMm;
  private final String defers;

  /**
   * @param defers what the figures do not replace
   */
  TagLines(TagFormat format, String defers) {
    this.format = format;
    this.unitMm = format.unitMm();
    this.defers = defers;
  }

  /** What a plan's figures do not replace. */
  static String defers(boolean byHand) {
    return byHand ? DEFERS_BY_HAND : DEFERS;
  }

  /**
   * @param broken whether the plan breaks rules
   */
  List<TagLine> of(Tag tag, RunningHead head, boolean broken) {
    List<TagLine> lines = new ArrayList<>();
    lines.add(new TagLine("bundle", bundle(tag), 5.4 * unitMm, true));
    lines.add(new TagLine("facts", facts(tag), 3.5 * unitMm, true));
    if (broken) {
      lines.add(new TagLine("heed", BROKEN, 3.3 * unitMm, true));
    }
    tag.cautions().forEach(c -> lines.add(new TagLine("heed", c, 3.3 * unitMm, true)));
    String inside = inside(tag);
    if (!inside.isEmpty()) {
      lines.add(new TagLine("inside", inside, 3 * unitMm, false));
    }
    lines.add(new TagLine("foot", foot(head), 2.7 * unitMm, true));
    lines.add(new TagLine("foot", defers, 2.3 * unitMm, false));
    return lines;
  }

  private String bundle(Tag tag) {
    return Lettering.fitted(tag.bundleId(), 5.4 * unitMm, true, format.innerWidthMm() * 0.95);
  }

  private static String facts(Tag tag) {
    return Lettering.shortened(LoadNames.of(tag.loadId()), 16)
        + ", "
        + Ordinals.of(tag.offOrder())
        + " off, at most "
        + tag.mass();
  }

  /** Two lines at most on the smallest tags, three on others; what does not fit is counted. */
  private String inside(Tag tag) {
    String pieces =
        switch (tag.pieces()) {
          case 0 -> "Pieces not listed";
          case 1 -> "1 piece";
          default -> tag.pieces() + " pieces";
        };
    String need = tag.need().isEmpty() ? "" : tag.need() + ". ";
    double lines = !format.small() ? 2.7 : tag.cautions().size() < 2 ? 1.8 : 0.98;
    double room = format.innerWidthMm() * lines;
    int shown = tag.inside().size();
    String text = need + pieces + inside(tag, shown);
    while (shown > 0 && Lettering.widthMm(text, 3 * unitMm, false) > room) {
      shown--;
      text = need + pieces + inside(tag, shown);
    }
    return text + ".";
  }

  private static String inside(Tag tag, int shown) {
    List<String> parts = new ArrayList<>(tag.inside().subList(0, shown));
    int more = tag.inside().size() - shown;
    if (more > 0) {
      parts.add(more + (shown > 0 ? " more" : "") + (more == 1 ? " wall" : " walls"));
    }
    return parts.isEmpty() ? "" : ": " + String.join("; ", parts);
  }

  /** A long name loses its middle here; revision and fingerprint must stay. */
  private String foot(RunningHead head) {
    String job = head.jobName();
    for (int most = 60; most > 8; most -= 4) {
      String shown = Lettering.shortened(job, most);
      String words = new RunningHead(shown, head.revision(), head.fingerprint()).words();
      if (Lettering.widthMm(words, 2.7 * unitMm, true) <= format.innerWidthMm()) {
        return words;
      }
    }
    return new RunningHead(Lettering.shortened(job, 8), head.revision(), head.fingerprint())
        .words();
  }
}
