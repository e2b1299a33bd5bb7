package skidway.sheet;

/**
 * A text on a tag below spot and tier.
 *
 * @param kind how it is set
 * @param sizeMm of its letters
 */
record TagLine(String kind, String text, double sizeMm, boolean bold) {
  /** Height over letter size, with the gap to the next. */
  private static final double LINE = 1.22;

  private static final double GAP_MM = 0.7;

  /** What a frame, its sign and its padding take of the width, in letters. */
  private static final double FRAME = 3;

  /** How high it is when it may be this wide. */
  double heightMm(double widthMm) {
    boolean framed = kind.equals("heed");
    double room = framed ? widthMm - FRAME * sizeMm : widthMm;
    // Lines break between words, so the last word of each may leave room unused.
    double wide = Lettering.widthMm(text, sizeMm, bold);
    double lines = wide <= room ? 1 : Math.ceil(wide / room * 1.08);
    return lines * sizeMm * LINE + GAP_MM + (framed ? 1.2 : 0);
  }
}
