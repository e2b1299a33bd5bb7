package skidway.sheet;

import skidway.site.Point;

/**
 * A point from which a tape is pulled.
 *
 * @param name one letter, as on the map
 * @param where it is found, to be read on site
 * @param stake whether it must be put there first, in line with two others
 */
record Reference(String name, Point at, String where, boolean stake) {
  /** A, B … Z, AA, AB … */
  static String letters(int index) {
    String last = Character.toString('A' + index % 26);
    return index < 26 ? last : letters(index / 26 - 1) + last;
  }
}
