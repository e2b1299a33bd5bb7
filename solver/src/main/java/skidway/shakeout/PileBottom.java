package skidway.shakeout;

import java.util.List;
import skidway.timber.Piece;

/**
 * What a pile bears on: as long as the shortest timber of its lowest layer and as wide as all of
 * them.
 */
record PileBottom(double lengthM, double widthM) {
  /**
   * @param pieces from the bottom up
   */
  static PileBottom of(List<Piece> pieces, int perLayer) {
    List<Piece> lowest = pieces.subList(0, Math.min(perLayer, pieces.size()));
    return new PileBottom(
        lowest.stream().mapToDouble(Piece::lengthM).min().orElseThrow(),
        lowest.stream().mapToDouble(p -> p.section().widthM()).sum());
  }
}
