package skidway.timber;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A banded bundle as it comes off the truck. A loose piece is a bundle of one.
 *
 * @param offOrder place in the order in which the bundles of its load come off; 1 is first
 * @param weighedKg its weight, when somebody weighed it
 */
public record Bundle(
    String id,
    String loadId,
    int offOrder,
    double lengthM,
    double widthM,
    double heightM,
    OptionalDouble weighedKg,
    List<PackedPiece> packed) {
  public Bundle {
    packed = List.copyOf(packed);
  }

  /** The weighed mass, or else the sum of its pieces. */
  public MassRange mass() {
    if (weighedKg.isPresent()) {
      return MassRange.weighed(weighedKg.getAsDouble());
    }
    return packed.stream().map(p -> p.piece().mass()).reduce(MassRange.NOTHING, MassRange::plus);
  }

  public double longestPieceM() {
    return packed.stream().mapToDouble(p -> p.piece().lengthM()).max().orElse(0);
  }

  /** What must be moved aside before it can be taken out: all pieces of higher layers. */
  public List<Piece> above(PackedPiece piece) {
    return packed.stream().filter(p -> p.layer() > piece.layer()).map(PackedPiece::piece).toList();
  }

  /** The pieces that it lies over: all of lower layers, whichever it touches (assumption). */
  public List<Piece> beneath(PackedPiece piece) {
    return packed.stream().filter(p -> p.layer() < piece.layer()).map(PackedPiece::piece).toList();
  }

  /** How many layers its pieces lie in, at least one. */
  public int layers() {
    return packed.stream().mapToInt(PackedPiece::layer).max().orElse(1);
  }

  public List<Piece> pieces() {
    return packed.stream().map(PackedPiece::piece).toList();
  }
}
