package skidway.sheet;

/**
 * The colours of the map. Hues follow Okabe and Ito's set, which people with any of the usual
 * colour vision deficiencies tell apart; every meaning also has a pattern, a shape or a word. Inks
 * stand out from every ground they are drawn on, in grey too; grounds only help the eye and have an
 * edge in ink.
 */
final class Palette {
  static final String INK = "#1d1d1b";
  static final String SOFT_INK = "#5c5a55";
  static final String PAPER = "#ffffff";
  static final String DECK = "#f4ead6";
  static final String JOIST = "#8c7f60";
  static final String YARD = "#edf1ec";
  static final String LANE = "#7d7d79";
  static final String KEEP_CLEAR = "#a83f06";
  static final String KEEP_CLEAR_MARGIN = "#f7ddcb";

  private Palette() {}
}
