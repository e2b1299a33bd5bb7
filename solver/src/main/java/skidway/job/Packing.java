package skidway.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;

/** Puts pieces into their bundles, and checks that they fit and that no bundle is empty. */
final class Packing {
  /** Bundles are measured by tape; a piece this much longer than its bundle is no mistake. */
  private static final double TAPE_TOLERANCE_M = 0.005;

  private final Map<String, BundlesReader.BundleRow> bundles;
  private final Map<String, List<PackedPiece>> packed = new HashMap<>();

  Packing(Map<String, BundlesReader.BundleRow> bundles) {
    this.bundles = bundles;
  }

  /** Puts each piece into its bundle, and returns those that fit or whose bundle is not known. */
  List<PiecesReader.PieceRow> pack(List<PiecesReader.PieceRow> pieces) {
    List<PiecesReader.PieceRow> fitting = new ArrayList<>();
    for (PiecesReader.PieceRow piece : pieces) {
      packed.computeIfAbsent(piece.bundleId(), b -> new ArrayList<>()).add(piece.packed());
      BundlesReader.BundleRow bundle = bundles.get(piece.bundleId());
      if (bundle == null || fits(piece, bundle.bundle())) {
        fitting.add(piece);
      }
    }
    return fitting;
  }

  /** The bundles with their pieces. */
  List<Bundle> bundles(PiecesReader pieces) {
    List<Bundle> full = new ArrayList<>();
    for (BundlesReader.BundleRow row : bundles.values()) {
      Bundle b = row.bundle();
      if (!pieces.names(b.id())) {
        row.row()
            .report(
                "bundle",
                "bundle \"" + b.id() + "\" without pieces",
                "every bundle holds a piece of pieces.csv; a loose piece is a bundle of one",
                "add its pieces or remove the bundle");
      }
      List<PackedPiece> inside = packed.getOrDefault(b.id(), List.of());
      roomy(row, inside);
      full.add(
          new Bundle(
              b.id(),
              b.loadId(),
              b.offOrder(),
              b.lengthM(),
              b.widthM(),
              b.heightM(),
              b.weighedKg(),
              inside));
    }
    return full;
  }

  private static boolean fits(PiecesReader.PieceRow piece, Bundle bundle) {
    CsvRow row = piece.row();
    double lengthM = piece.packed().piece().lengthM();
    if (lengthM <= bundle.lengthM() + TAPE_TOLERANCE_M) {
      return true;
    }
    row.report(
        "length",
        "piece \"" + piece.packed().piece().mark() + "\" of " + row.length(lengthM),
        "bundle \"" + bundle.id() + "\" is " + row.length(bundle.lengthM()) + " long",
        "correct the piece's length or bundle, or the bundle's length");
    return false;
  }

  /** More wood than the bundle's outside has room for: its stack would be higher than planned. */
  private static void roomy(BundlesReader.BundleRow row, List<PackedPiece> inside) {
    Bundle b = row.bundle();
    double woodM3 = 0;
    for (PackedPiece p : inside) {
      Piece piece = p.piece();
      woodM3 += piece.section().areaM2() * piece.lengthM();
    }
    if (woodM3 > b.lengthM() * b.widthM() * b.heightM() * 1.02) {
      row.row()
          .report(
              "bundle",
              "more wood in the pieces of bundle \"" + b.id() + "\" than it has room for",
              "the pieces fit into the bundle's length, width and height",
              "measure the bundle again, or check which pieces are in it");
    }
  }
}
