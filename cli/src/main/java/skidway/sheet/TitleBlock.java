package skidway.sheet;

/**
 * Heads a drawing, so that a sheet on its own still says which job and revision it is.
 *
 * @param left what it shows
 * @param middle the job
 * @param right the revision
 * @param under which page of how many, and at which scale
 */
record TitleBlock(String left, String middle, String right, String under) {
  static final double HEIGHT = 16;

  private static final double BIGGEST = 6;
  private static final double GAP = 6;
  private static final Type SMALL = Type.plain(3.2);

  void draw(Drawing drawing, Paper paper) {
    drawing.open("title-block");
    Type big = Type.bold(BIGGEST);
    Type job = Type.plain(4.4);
    double rightWidth = big.widthMm(right);
    double room = paper.widthMm() - rightWidth - GAP;
    String shows = Lettering.fitted(left, BIGGEST, true, room * 0.6);
    drawing.text(shows, new PagePoint(0, 3.2), big);
    drawing.text(right, new PagePoint(paper.widthMm(), 3.2), big.toTheRight());
    double from = big.widthMm(shows) + GAP;
    String of = Lettering.fitted(middle, job.sizeMm(), false, room - from - 1);
    drawing.text(of, new PagePoint(from, 3.5), job);
    drawing.text(
        Lettering.fitted(under, SMALL.sizeMm(), false, paper.widthMm()),
        new PagePoint(0, 9),
        SMALL);
    beam(drawing, paper.widthMm());
    drawing.close();
  }

  /** A timber on two bearers: the rule under every heading. */
  private static void beam(Drawing drawing, double widthMm) {
    drawing.rect(Box.at(0, 11.4, widthMm, 1.1), "fill", Palette.INK);
    for (double x : new double[] {6, widthMm - 9}) {
      drawing.rect(Box.at(x, 12.9, 3, 1), "fill", Palette.INK);
    }
  }
}
