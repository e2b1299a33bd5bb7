package skidway.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.SpotKind;
import skidway.timber.Bundle;
import skidway.timber.Delivery;

/**
 * Chooses the sizes of spots from the bundles delivered: a few classes of length, each as long and
 * wide as its largest bundle, rounded up to 5 cm; and one size of standing rack when some bundle
 * holds short pieces only.
 */
final class SpotSizes {
  private static final int MOST_CLASSES = 4;
  private static final int STEPS_PER_M = 20;

  /**
   * Footprint of a standing rack (assumption): two rows of pieces on end, reached from one side.
   */
  private static final SpotSize STANDING_RACK = new SpotSize(SpotKind.RACK, 1.8, 0.9);

  private SpotSizes() {}

  /** Shortest first; empty when nothing is delivered. */
  static List<SpotSize> stacks(Delivery delivery) {
    List<Bundle> byLength =
        delivery.bundles().stream().sorted(Comparator.comparingDouble(Bundle::lengthM)).toList();
    double[] lengthsM = byLength.stream().mapToDouble(Bundle::lengthM).toArray();
    List<SpotSize> sizes = new ArrayList<>();
    int from = 0;
    for (int to : LengthClasses.ends(lengthsM, MOST_CLASSES)) {
      double widthM =
          byLength.subList(from, to).stream().mapToDouble(Bundle::widthM).max().orElse(0);
      sizes.add(new SpotSize(SpotKind.STACK, roundUp(lengthsM[to - 1]), roundUp(widthM)));
      from = to;
    }
    return sizes;
  }

  static Optional<SpotSize> rack(Delivery delivery, Settings settings) {
    double longestM = settings.get(Setting.RACK_PIECE_LENGTH);
    boolean wanted =
        delivery.bundles().stream()
            .anyMatch(b -> !b.packed().isEmpty() && b.longestPieceM() <= longestM);
    return wanted ? Optional.of(STANDING_RACK) : Optional.empty();
  }

  private static double roundUp(double metres) {
    return Math.ceil(metres * STEPS_PER_M - 1e-6) / STEPS_PER_M;
  }
}
