package skidway.sheet;

/** How large tags are and what they are printed on: cut from a sheet, or one a label of a roll. */
public sealed interface TagFormat permits TagSheet, TagRoll {
  /** Tags on a printed page. */
  int perPage();

  /** Of the page, millimetres. */
  double pageWidthMm();

  /** Of the page, millimetres. */
  double pageHeightMm();

  /** Of one tag with its padding, millimetres. */
  double tagWidthMm();

  /** Of one tag with its padding, millimetres. */
  double tagHeightMm();

  /** What text and code may take, millimetres. */
  double innerWidthMm();

  /** What text and code may take, millimetres. */
  double innerHeightMm();

  /** Whether tags stand, so that the spot's code has the whole width. */
  boolean standing();

  /** Whether there is room for two lines of contents only. */
  boolean small();

  /** What the sizes of letters are counted in, millimetres. */
  double unitMm();

  /** Edge of the code that telephones read, quiet zone included. */
  double qrMm();

  /** The style that depends on the size. */
  String css();
}
