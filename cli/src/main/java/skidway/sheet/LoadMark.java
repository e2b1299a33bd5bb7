package skidway.sheet;

/** Writes the mark of a load into the page as the map shows it: its filling and its number. */
final class LoadMark {
  private LoadMark() {}

  static void write(Markup page, int turn) {
    page.open("svg", "class", "mark", "viewBox", "-0.3 -0.3 5.6 4.6", "aria-hidden", "true");
    Swatch.draw(new Drawing(page), turn, Box.at(0, 0, 5, 4));
    page.close();
  }
}
