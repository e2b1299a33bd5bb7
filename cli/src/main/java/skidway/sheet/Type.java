package skidway.sheet;

/** A way of setting text on a drawing. */
record Type(double sizeMm, boolean bold, String ink, Anchor anchor) {
  /** Which end of the text its position is about. */
  enum Anchor {
    START("start"),
    MIDDLE("middle"),
    END("end");

    private final String svg;

    Anchor(String svg) {
      this.svg = svg;
    }

    String svg() {
      return svg;
    }
  }

  static Type plain(double sizeMm) {
    return new Type(sizeMm, false, Palette.INK, Anchor.START);
  }

  static Type bold(double sizeMm) {
    return new Type(sizeMm, true, Palette.INK, Anchor.START);
  }

  Type centred() {
    return new Type(sizeMm, bold, ink, Anchor.MIDDLE);
  }

  Type toTheRight() {
    return new Type(sizeMm, bold, ink, Anchor.END);
  }

  Type in(String colour) {
    return new Type(sizeMm, bold, colour, anchor);
  }

  double widthMm(String text) {
    return Lettering.widthMm(text, sizeMm, bold);
  }

  /** Distance from the middle of capital letters down to the line they stand on. */
  double drop() {
    return sizeMm * 0.36;
  }
}
