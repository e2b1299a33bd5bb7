package skidway.shakeout;

import java.util.List;
import java.util.Map;
import skidway.timber.Piece;

/** What a place takes of a pile: how long and high it may be, what lies on what, what bears it. */
final class PileRules {
  private final Timbers timbers;
  private final Room room;
  private final Pricing pricing;
  private final PileBearing bearing;
  private final double overhangM;
  private final double[] heightsM;
  private final Map<Integer, Integer> mostLayers;

  /**
   * @param pricing of what a wave brings
   * @param overhangM how much longer than one beneath it a timber may be
   * @param heightsM how high a pile may be on each place, 0 where it may not stand
   * @param mostLayers how many layers a place may have at most, for those that turned out too much
   */
  PileRules(
      Timbers timbers,
      Room room,
      Pricing pricing,
      PileBearing bearing,
      double overhangM,
      double[] heightsM,
      Map<Integer, Integer> mostLayers) {
    this.timbers = timbers;
    this.room = room;
    this.pricing = pricing;
    this.bearing = bearing;
    this.overhangM = overhangM;
    this.heightsM = heightsM.clone();
    this.mostLayers = Map.copyOf(mostLayers);
  }

  double overhangM() {
    return overhangM;
  }

  double heightM(int place) {
    return heightsM[place];
  }

  /** How many timbers like one a place takes. */
  int most(int place, Piece like) {
    int layers = Math.min(layersAllowed(place), pricing.layers(like, heightsM[place]));
    return Math.max(0, layers * pricing.perLayer(like));
  }

  private int layersAllowed(int place) {
    return mostLayers.getOrDefault(place, Integer.MAX_VALUE);
  }

  /**
   * @param pulls from the bottom up
   */
  boolean mayStand(int place, List<Integer> pulls) {
    List<Piece> pieces = pulls.stream().map(timbers::piece).toList();
    Piece like = pieces.get(0);
    if (pieces.size() > most(place, like)) {
      return false;
    }
    double roomM = room.places.get(place).footprint().lengthM();
    double shortestM = Double.POSITIVE_INFINITY;
    for (Piece piece : pieces) {
      boolean fits =
          piece.section().equals(like.section())
              && piece.lengthM() <= roomM + 1e-9
              && piece.lengthM() <= shortestM + overhangM + 1e-9;
      if (!fits) {
        return false;
      }
      shortestM = Math.min(shortestM, piece.lengthM());
    }
    return bears(place, pulls);
  }

  boolean bears(int place, List<Integer> pulls) {
    List<Piece> pieces = pulls.stream().map(timbers::piece).toList();
    int perLayer = pricing.perLayer(pieces.get(0));
    double heightM = pricing.heightM(pieces.get(0), pieces.size());
    return bearing.bears(room.places.get(place), pieces, PileBottom.of(pieces, perLayer), heightM);
  }
}
