package skidway.audit;

import skidway.timber.Piece;
import skidway.timber.Section;
import skidway.units.Figures;

/** Pieces that are handled alike: one species, one section, one length. */
record PieceKind(String species, Section section, long lengthMm) {
  static PieceKind of(Piece piece) {
    long lengthMm = Math.round(piece.lengthM() * 1000);
    return new PieceKind(piece.species().name(), piece.section(), lengthMm);
  }

  /** "white oak, 0.20 m by 0.15 m, 4.00 m long". */
  String words(Figures figures) {
    return species
        + ", "
        + figures.length(section.widthM())
        + " by "
        + figures.length(section.heightM())
        + ", "
        + figures.length(lengthMm / 1000.0)
        + " long";
  }
}
