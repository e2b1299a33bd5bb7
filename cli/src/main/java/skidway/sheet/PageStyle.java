package skidway.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/** Reads the pages' style sheets, which are written into the pages themselves. */
final class PageStyle {
  private PageStyle() {}

  /** Of the packet and of other pages without a fixed size on the screen. */
  static String packet(PaperSize paper, String signs) {
    return css() + printedOn(paper, signs);
  }

  /** Of the sheet of waves. */
  static String waves(PaperSize paper) {
    return packet(paper, "") + read("waves.css");
  }

  /** What is added to the packet's when the waves are one of its parts. */
  static String waves(Set<Part> parts) {
    return parts.contains(Part.WAVES) ? read("waves.css") : "";
  }

  static String wavesInPdf(Set<Part> parts) {
    return parts.contains(Part.WAVES) ? read("waves-pdf.css") : "";
  }

  static String css() {
    return read("packet.css");
  }

  /** Of the packet put into a PDF: the same look by the means of CSS 2.1, without a screen. */
  static String packetInPdf(PaperSize paper, String signs) {
    return read("packet-pdf.css") + pages(paper) + mapAndSigns(paper) + signs;
  }

  /** Of a sheet that is filled in at the truck. */
  static String tally(PaperSize paper) {
    return packet(paper, "") + read("tally.css");
  }

  static String tallyInPdf(PaperSize paper) {
    return packetInPdf(paper, "") + read("tally-pdf.css");
  }

  private static String printedOn(PaperSize paper, String signs) {
    return pages(paper) + "@media print {\n" + mapAndSigns(paper) + signs + "}\n";
  }

  private static String pages(PaperSize paper) {
    String side = Numbers.of(PaperSize.MARGIN_MM) + "mm ";
    String foot = Numbers.of(PaperSize.FOOT_MM) + "mm";
    String map = side + side + foot;
    return page("@page", paper.widthMm(), paper.heightMm(), "10mm 9mm " + foot)
        + page("@page map", paper.heightMm(), paper.widthMm(), map)
        + page("@page map-standing", paper.widthMm(), paper.heightMm(), map);
  }

  private static String page(String which, double widthMm, double heightMm, String margins) {
    return which + " { size: " + millimetres(widthMm, heightMm) + "; margin: " + margins + "; }\n";
  }

  /** What fills a page is told how large that is. */
  private static String mapAndSigns(PaperSize paper) {
    double insideMm = paper.heightMm() - 10 - PaperSize.FOOT_MM;
    return map(".lying", paper.lying())
        + map(".standing", paper.standing())
        + ".placard, .stack-sign { min-height: "
        + Numbers.of(insideMm - 2)
        + "mm; }\n";
  }

  /** The same millimetres that stand in the drawing: a map must measure right. */
  private static String map(String which, Paper map) {
    return which
        + " > svg { width: "
        + Numbers.of(map.widthMm())
        + "mm; height: "
        + Numbers.of(map.heightMm())
        + "mm; }\n";
  }

  /** A size as style sheets write it. */
  static String millimetres(double widthMm, double heightMm) {
    return Numbers.of(widthMm) + "mm " + Numbers.of(heightMm) + "mm";
  }

  /** Of the tags, which are cut from paper of a fixed size and share nothing with the packet. */
  static String tags() {
    return read("tags.css");
  }

  static String tagsInPdf() {
    return read("tags-pdf.css");
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
