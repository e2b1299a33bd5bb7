package skidway.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads the pages' style sheets, which are written into the pages themselves. */
final class PageStyle {
  private PageStyle() {}

  /** Of the packet and of other pages without a fixed size on the screen. */
  static String packet(PaperSize paper) {
    return css() + printedOn(paper);
  }

  static String css() {
    return read("packet.css");
  }

  /** What a style sheet must be told in millimetres: the page, its map, signs that fill it. */
  private static String printedOn(PaperSize paper) {
    Paper map = paper.lying();
    String side = Numbers.of(PaperSize.MARGIN_MM) + "mm ";
    String foot = Numbers.of(PaperSize.FOOT_MM) + "mm ";
    double insideMm = paper.heightMm() - 10 - PaperSize.FOOT_MM;
    return "@page { size: "
        + millimetres(paper.widthMm(), paper.heightMm())
        + "; margin: 10mm 9mm "
        + foot
        + "; }\n@page map { size: "
        + millimetres(paper.heightMm(), paper.widthMm())
        + "; margin: "
        + side
        + side
        + foot
        + side
        + "; }\n@media print { .sheet svg, #whole:checked ~ .sheet svg { width: "
        + Numbers.of(map.widthMm())
        + "mm; height: "
        + Numbers.of(map.heightMm())
        + "mm; }\n.placard, .stack-sign { min-height: "
        + Numbers.of(insideMm - 2)
        + "mm; } }\n";
  }

  /** A size as style sheets write it. */
  static String millimetres(double widthMm, double heightMm) {
    return Numbers.of(widthMm) + "mm " + Numbers.of(heightMm) + "mm";
  }

  /** Of the tags, which are cut from paper of a fixed size and share nothing with the packet. */
  static String tags() {
    return read("tags.css");
  }

  /** What differs where every tag is a label of a roll. */
  static String roll() {
    return read("roll.css");
  }

  private static String read(String name) {
    try (InputStream in = PageStyle.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("The style sheet " + name + " is missing.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
