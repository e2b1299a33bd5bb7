package skidway.layout;

import java.util.List;
import skidway.timber.Bundle;
import skidway.timber.Delivery;

/**
 * Which size of spot is most wanting while ground is given out row by row: the one with most
 * bundles for each spot it has so far.
 */
final class GroundDemand {
  private final List<SpotSize> sizes;
  private final int[] bundles;
  private final int[] spots;

  /**
   * Begins with no ground given out.
   *
   * @param sizes shortest first, the longest as long as the longest bundle; not empty
   */
  GroundDemand(List<SpotSize> sizes, Delivery delivery) {
    double widestM = sizes.stream().mapToDouble(SpotSize::widthM).max().orElse(0);
    // Of one width, so that rows of all sizes stand at one pitch.
    this.sizes = sizes.stream().map(s -> new SpotSize(s.kind(), s.lengthM(), widestM)).toList();
    bundles = new int[sizes.size()];
    spots = new int[sizes.size()];
    for (Bundle bundle : delivery.bundles()) {
      bundles[sizeOf(bundle)]++;
    }
  }

  private int sizeOf(Bundle bundle) {
    int size = 0;
    while (size < sizes.size() - 1 && sizes.get(size).lengthM() < bundle.lengthM()) {
      size++;
    }
    return size;
  }

  /** All sizes, of one width. */
  List<SpotSize> sizes() {
    return sizes;
  }

  /** Index of the size that the next row is for. */
  int mostWanting() {
    int most = 0;
    for (int i = 1; i < spots.length; i++) {
      // A longer spot holds shorter bundles too, so it wins a tie.
      if ((long) bundles[i] * (spots[most] + 1) >= (long) bundles[most] * (spots[i] + 1)) {
        most = i;
      }
    }
    return most;
  }

  void served(int size, int more) {
    spots[size] += more;
  }
}
