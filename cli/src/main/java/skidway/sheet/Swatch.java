package skidway.sheet;

/** Draws the mark of a load: its filling and its number. */
final class Swatch {
  private static final Type NUMBER = Type.bold(2.8).centred();

  private Swatch() {}

  static void draw(Drawing drawing, int loadTurn, Box box) {
    LoadLook.fill(drawing, loadTurn, box.corners());
    drawing.circle(box.centre(), 1.6, "fill", Palette.PAPER);
    String number = loadTurn == 0 ? "?" : Integer.toString(loadTurn);
    drawing.text(number, box.centre(), NUMBER);
  }
}
