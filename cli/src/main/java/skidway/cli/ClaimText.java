package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import skidway.progress.EventWords;
import skidway.timber.Bundle;
import skidway.timber.Piece;
import skidway.units.Figures;

/** Writes a claim as a letter's plain text, every figure in metric and US units. */
final class ClaimText {
  private final Claim claim;
  private final List<String> lines = new ArrayList<>();

  private ClaimText(Claim claim) {
    this.claim = claim;
  }

  static String of(Claim claim) {
    ClaimText text = new ClaimText(claim);
    text.write();
    return String.join("\n", text.lines) + "\n";
  }

  private void write() {
    String loadId = claim.load().id();
    lines.add("Claim list for load " + loadId + " of " + claim.task().jobName());
    lines.add("Arrived " + EventWords.time(claim.arrived()) + ".");
    for (Claim.Kind kind : Claim.Kind.values()) {
      List<Claim.Line> of = claim.of(kind);
      lines.add("");
      lines.add(kind.words() + ": " + (of.isEmpty() ? "nothing." : counted(of)));
      of.forEach(this::line);
    }
    lines.add("");
    if (claim.lines().isEmpty()) {
      lines.add("All that was expected is recorded as there.");
    } else {
      lines.add("Please say when what is missing or damaged comes, and what the rest is.");
      lines.add("Weights are the most to expect by size, species and moisture, unless weighed.");
      lines.add("Sizes are those of the packing list; none was measured for this list.");
    }
  }

  private static String counted(List<Claim.Line> lines) {
    long bundles = lines.stream().filter(l -> whole(l)).count();
    long pieces = lines.stream().filter(l -> l.piece().isPresent()).count();
    long within = lines.stream().filter(l -> whole(l)).mapToLong(l -> l.pieces().size()).sum();
    List<String> parts = new ArrayList<>();
    if (bundles > 0) {
      parts.add(Figures.counted(bundles, "bundle") + " with " + Figures.counted(within, "piece"));
    }
    if (pieces > 0) {
      parts.add(Figures.counted(pieces, "single piece"));
    }
    if (parts.isEmpty()) {
      parts.add(Figures.counted(lines.size(), "thing"));
    }
    return String.join(", ", parts) + ".";
  }

  private static boolean whole(Claim.Line line) {
    return line.bundle().isPresent() && line.piece().isEmpty();
  }

  private void line(Claim.Line line) {
    if (whole(line)) {
      bundle(line, line.bundle().orElseThrow());
    } else if (line.piece().isPresent()) {
      String in = line.bundle().map(b -> " of bundle " + b.id()).orElse("");
      lines.add("  Piece " + line.id() + in + ": " + size(line.piece().orElseThrow()));
      said(line);
    } else {
      lines.add("  " + line.id());
      said(line);
    }
  }

  private void bundle(Claim.Line line, Bundle bundle) {
    lines.add(
        "  Bundle "
            + bundle.id()
            + ": "
            + Figures.counted(bundle.packed().size(), "piece")
            + ", "
            + BothUnits.size(bundle)
            + ", at most "
            + BothUnits.mass(bundle.mass().highKg()));
    said(line);
    for (Piece piece : bundle.pieces()) {
      lines.add("      " + piece.mark() + ": " + size(piece));
    }
  }

  private void said(Claim.Line line) {
    if (!line.note().isEmpty()) {
      lines.add("      " + line.note());
    }
    lines.add("      recorded " + EventWords.time(line.at()) + " by " + line.by());
  }

  private static String size(Piece piece) {
    return BothUnits.length(piece.lengthM())
        + ", "
        + BothUnits.section(piece.section())
        + ", "
        + piece.species().name()
        + ", wall "
        + piece.wallId()
        + " course "
        + piece.course();
  }
}
