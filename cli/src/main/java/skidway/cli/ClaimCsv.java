package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import skidway.timber.Bundle;
import skidway.timber.Piece;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/**
 * Writes a claim as comma-separated values (RFC 4180): a row a timber, of a whole bundle each of
 * its timbers, of what is on no list a row a thing. What looks like a formula is made harmless.
 */
final class ClaimCsv {
  private static final String LINE_END = "\r\n";
  private static final Figures US = new Figures(UnitSystem.US);

  private ClaimCsv() {}

  static String text(Claim claim) {
    List<String> rows = new ArrayList<>();
    rows.add(
        Csv.row(
            "load",
            "what",
            "id",
            "bundle",
            "whole_bundle",
            "piece",
            "wall",
            "course",
            "position",
            "species",
            "length_m",
            "length_ft_in",
            "width_m",
            "width_ft_in",
            "height_m",
            "height_ft_in",
            "mass_at_most_kg",
            "mass_at_most_lb",
            "note",
            "recorded",
            "by"));
    for (Claim.Line line : claim.lines()) {
      if (line.pieces().isEmpty()) {
        rows.add(extra(claim, line));
      }
      line.pieces().forEach(piece -> rows.add(piece(claim, line, piece)));
    }
    return String.join(LINE_END, rows) + LINE_END;
  }

  private static String extra(Claim claim, Claim.Line line) {
    List<String> cells = new ArrayList<>(List.of(claim.load().id(), "extra", line.id()));
    for (int i = 0; i < 15; i++) {
      cells.add("");
    }
    cells.addAll(List.of(line.note(), line.at().toString(), line.by()));
    return Csv.row(cells.toArray(String[]::new));
  }

  private static String piece(Claim claim, Claim.Line line, Piece piece) {
    double kg = piece.mass().highKg();
    return Csv.row(
        claim.load().id(),
        line.kind() == Claim.Kind.MISSING ? "missing" : "damaged",
        line.id(),
        line.bundle().map(Bundle::id).orElse(""),
        line.piece().isEmpty() ? "yes" : "no",
        piece.mark(),
        piece.wallId(),
        Integer.toString(piece.course()),
        Integer.toString(piece.position()),
        piece.species().name(),
        Csv.figure(piece.lengthM()),
        US.length(piece.lengthM()),
        Csv.figure(piece.section().widthM()),
        US.length(piece.section().widthM()),
        Csv.figure(piece.section().heightM()),
        US.length(piece.section().heightM()),
        Figures.number(new Figures(UnitSystem.METRIC).mass(kg)),
        Figures.number(US.mass(kg)),
        line.note(),
        line.at().toString(),
        line.by());
  }
}
