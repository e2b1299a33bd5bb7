package skidway.sheet;

/**
 * How a sheet of paper is divided into tags.
 *
 * @param perPage 2, 4 or 8
 */
public record TagSheet(PaperSize paper, int perPage) {
  /** Wide enough for the blind edge of common printers and for the cut marks in it. */
  static final double MARGIN_MM = 8;

  /** Kept free inside each tag, so that a crooked cut takes no text. */
  static final double PADDING_MM = 4;

  public TagSheet {
    if (paper != paper.forTags()) {
      throw new IllegalArgumentException("Tags are cut from Letter or A4, not " + paper + ".");
    }
    if (perPage != 2 && perPage != 4 && perPage != 8) {
      throw new IllegalArgumentException("A page holds 2, 4 or 8 tags, not " + perPage + ".");
    }
  }

  int columns() {
    return perPage == 2 ? 1 : 2;
  }

  int rows() {
    return perPage / columns();
  }

  double tagWidthMm() {
    return (paper.widthMm() - 2 * MARGIN_MM) / columns();
  }

  double tagHeightMm() {
    return (paper.heightMm() - 2 * MARGIN_MM) / rows();
  }

  double innerWidthMm() {
    return tagWidthMm() - 2 * PADDING_MM;
  }

  double innerHeightMm() {
    return tagHeightMm() - 2 * PADDING_MM;
  }

  /** Whether tags stand, so that the spot's code has the whole width. */
  boolean standing() {
    return perPage == 4;
  }

  /** What the sizes of letters are counted in, millimetres. */
  double unitMm() {
    return perPage == 2 ? 2 : perPage == 4 ? 1.2 : 0.94;
  }

  /** Edge of the code that telephones read, quiet zone included. */
  double qrMm() {
    return perPage == 2 ? 68 : perPage == 4 ? 46 : 31;
  }
}
