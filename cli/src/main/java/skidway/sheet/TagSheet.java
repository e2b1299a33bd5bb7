package skidway.sheet;

/**
 * How a sheet of paper is divided into tags.
 *
 * @param perPage 2, 4 or 8
 */
public record TagSheet(PaperSize paper, int perPage) implements TagFormat {
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

  @Override
  public double tagWidthMm() {
    return (paper.widthMm() - 2 * MARGIN_MM) / columns();
  }

  @Override
  public double tagHeightMm() {
    return (paper.heightMm() - 2 * MARGIN_MM) / rows();
  }

  @Override
  public double innerWidthMm() {
    return tagWidthMm() - 2 * PADDING_MM;
  }

  @Override
  public double innerHeightMm() {
    return tagHeightMm() - 2 * PADDING_MM;
  }

  @Override
  public boolean standing() {
    return perPage == 4;
  }

  @Override
  public double unitMm() {
    return perPage == 2 ? 2 : perPage == 4 ? 1.2 : 0.94;
  }

  @Override
  public double qrMm() {
    return perPage == 2 ? 68 : perPage == 4 ? 46 : 31;
  }

  @Override
  public double pageWidthMm() {
    return paper.widthMm();
  }

  @Override
  public double pageHeightMm() {
    return paper.heightMm();
  }

  @Override
  public boolean small() {
    return perPage == 8;
  }

  @Override
  public String css() {
    return "@page { size: "
        + PageStyle.millimetres(paper.widthMm(), paper.heightMm())
        + "; margin: 0; }\n.sheet, .cuts { width: "
        + Numbers.of(paper.widthMm())
        + "mm; height: "
        + Numbers.of(paper.heightMm())
        + "mm; }\n.sheet { padding: "
        + Numbers.of(TagSheet.MARGIN_MM)
        + "mm; }\n.tag { width: "
        + Numbers.of(tagWidthMm())
        + "mm; padding: "
        + Numbers.of(TagSheet.PADDING_MM)
        + "mm; }\n";
  }
}
