package skidway.limits;

import skidway.timber.Bundle;
import skidway.timber.Piece;

/** How much of a standing rack's floor pieces on end take. */
public final class RackRoom {
  private RackRoom() {}

  /**
   * Floor that the pieces of a bundle cover on end, m²; round logs count as the square around them.
   */
  public static double floorM2(Bundle bundle) {
    double sum = 0;
    for (Piece piece : bundle.pieces()) {
      sum += piece.section().widthM() * piece.section().heightM();
    }
    return sum;
  }
}
