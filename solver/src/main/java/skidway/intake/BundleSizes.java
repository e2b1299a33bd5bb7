package skidway.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/**
 * Works out a bundle's outer size from its timbers: side by side in layers, the first of the list
 * at the bottom, none end to end. Without layers in the list it is packed about as high as it is
 * wide. Bands, stickers and gaps are not in it: whoever can, measures the bundle.
 */
final class BundleSizes {
  /** Widest bundle that is packed here, metres (assumption: what forks and lanes usually take). */
  private static final double WIDEST_M = 1.2;

  private final UnitSystem units;

  BundleSizes(UnitSystem units) {
    this.units = units;
  }

  /**
   * A bundle's size and its timbers with their layers.
   *
   * @param fields {@code length}, {@code width}, {@code height}
   */
  record Packed(Map<String, String> fields, List<NewPiece> pieces) {}

  Packed pack(List<NewPiece> pieces) {
    boolean layered = pieces.stream().noneMatch(p -> p.field("layer").isEmpty());
    List<NewPiece> inLayers = layered ? pieces : layered(pieces);
    Map<Integer, double[]> layers = new TreeMap<>();
    double lengthM = 0;
    for (NewPiece piece : inLayers) {
      double[] layer =
          layers.computeIfAbsent(Integer.parseInt(piece.field("layer")), l -> new double[2]);
      layer[0] += piece.widthM();
      layer[1] = Math.max(layer[1], piece.heightM());
      lengthM = Math.max(lengthM, piece.lengthM());
    }
    double widthM = layers.values().stream().mapToDouble(l -> l[0]).max().orElse(0);
    double heightM = layers.values().stream().mapToDouble(l -> l[1]).sum();
    return new Packed(
        Map.of("length", up(lengthM), "width", up(widthM), "height", up(heightM)), inLayers);
  }

  private static List<NewPiece> layered(List<NewPiece> pieces) {
    double areaM2 = pieces.stream().mapToDouble(p -> p.widthM() * p.heightM()).sum();
    double mostM = Math.min(WIDEST_M, Math.sqrt(areaM2));
    List<NewPiece> inLayers = new ArrayList<>();
    int layer = 1;
    double usedM = 0;
    for (NewPiece piece : pieces) {
      if (usedM > 0 && usedM + piece.widthM() / 2 > mostM) {
        layer++;
        usedM = 0;
      }
      usedM += piece.widthM();
      inLayers.add(piece.with("layer", Integer.toString(layer)));
    }
    return inLayers;
  }

  /** Rounded up to the centimetre or half inch. */
  private String up(double metres) {
    if (units == UnitSystem.METRIC) {
      long cm = (long) Math.ceil(metres * 100 - 1e-6);
      return BigDecimal.valueOf(cm, 2).toPlainString() + " m";
    }
    double halfInchM = 0.0127;
    return new Figures(UnitSystem.US).length(Math.ceil(metres / halfInchM - 1e-6) * halfInchM);
  }
}
