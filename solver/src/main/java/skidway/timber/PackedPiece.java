package skidway.timber;

/** A piece and the layer of the bundle it lies in; 1 is the lowest. */
public record PackedPiece(Piece piece, int layer) {}
