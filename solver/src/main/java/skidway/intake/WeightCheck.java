package skidway.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import skidway.timber.Bundle;
import skidway.timber.MassRange;
import skidway.timber.Piece;
import skidway.timber.WoodDensity;
import skidway.units.Figures;

/** Compares the weights of a list with those computed from size, species and moisture. */
final class WeightCheck {
  /** How far beyond the computed range a weight is told of: sizes are not exact (assumption). */
  private static final double BEYOND_SHARE = 0.10;

  private static final int MOST_TOLD = 20;

  private WeightCheck() {}

  /** A sentence for each weight that is out of line, the first of many, and what to do. */
  static List<String> sentences(List<Bundle> bundles, Set<String> marks, Figures figures) {
    List<String> sentences = new ArrayList<>();
    int count = 0;
    int weighed = 0;
    for (Bundle bundle : bundles) {
      for (Piece piece : bundle.pieces()) {
        if (!marks.contains(piece.mark()) || piece.weighedKg().isEmpty()) {
          continue;
        }
        weighed++;
        double kg = piece.weighedKg().getAsDouble();
        MassRange computed =
            WoodDensity.range(piece.species(), piece.moisture())
                .times(piece.section().areaM2() * piece.lengthM());
        boolean light = kg < computed.lowKg() * (1 - BEYOND_SHARE);
        if ((light || kg > computed.highKg() * (1 + BEYOND_SHARE)) && ++count <= MOST_TOLD) {
          sentences.add(
              piece.mark()
                  + ": "
                  + figures.mass(kg)
                  + " in the list, "
                  + figures.mass(computed.lowKg())
                  + " to "
                  + figures.mass(computed.highKg())
                  + " computed"
                  + (light ? "; too light a figure is the dangerous one." : "."));
        }
      }
    }
    if (count > MOST_TOLD) {
      sentences.add("... and " + (count - MOST_TOLD) + " more.");
    }
    if (weighed > 0) {
      sentences.add(
          0,
          count
              + " of "
              + weighed
              + " weights of the list lie more than 10 % beyond what size, species and moisture"
              + " give.");
      sentences.add(
          "They go into the job as weighed. If the mill worked them out, leave them out with"
              + " --column weight=none: then the job keeps a spread.");
    }
    return sentences;
  }
}
