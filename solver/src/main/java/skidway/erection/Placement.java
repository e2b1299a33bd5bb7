package skidway.erection;

import skidway.site.Point;
import skidway.site.Wall;
import skidway.timber.Piece;

/**
 * A piece at its place in the building.
 *
 * @param fromM distance of its left end from the wall's start
 * @param bottomM height of its lower face above the wall's foot
 */
public record Placement(Piece piece, Wall wall, double fromM, double bottomM) {
  /** Its lower face in whole millimetres: pieces of one level are laid in any order. */
  long levelMm() {
    return Math.round(bottomM * 1000);
  }

  public double topM() {
    return bottomM + piece.section().heightM();
  }

  public double toM() {
    return fromM + piece.lengthM();
  }

  /** The middle of its place on the wall's centre line. */
  public Point middle() {
    return wall.at(fromM + piece.lengthM() / 2);
  }
}
