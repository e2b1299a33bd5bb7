package skidway.sheet;

/**
 * Heads a drawing, so that a sheet on its own still says which job and revision it is.
 *
 * @param left the job
 * @param right the revision
 * @param under what it shows, and at which scale
 */
record TitleBlock(String left, String right, String under) {
  static final double HEIGHT = 15;

  private static final Type BIG = Type.bold(5.2);
  private static final Type SMALL = Type.plain(2.8);

  void draw(Drawing drawing, Paper paper) {
    drawing.open("title-block");
    double rightWidth = BIG.widthMm(right);
    String job = Lettering.fitted(left, BIG.sizeMm(), true, paper.widthMm() - rightWidth - 12);
    drawing.text(job, new PagePoint(0, 3.2), BIG);
    drawing.text(right, new PagePoint(paper.widthMm(), 3.2), BIG.toTheRight());
    drawing.text(
        Lettering.fitted(under, SMALL.sizeMm(), false, paper.widthMm()),
        new PagePoint(0, 8.4),
        SMALL);
    beam(drawing, paper.widthMm());
    drawing.close();
  }

  /** A timber on two bearers: the rule under every heading. */
  private static void beam(Drawing drawing, double widthMm) {
    drawing.rect(Box.at(0, 10.6, widthMm, 1.1), "fill", Palette.INK);
    for (double x : new double[] {6, widthMm - 9}) {
      drawing.rect(Box.at(x, 12.1, 3, 1), "fill", Palette.INK);
    }
  }
}
