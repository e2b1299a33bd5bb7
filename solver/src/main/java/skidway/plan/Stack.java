package skidway.plan;

import java.util.List;
import skidway.site.Spot;

/**
 * The bundles of one spot.
 *
 * @param bundleIds bottom to top; in a rack side by side, in any order
 */
public record Stack(Spot spot, List<String> bundleIds) {
  public Stack {
    bundleIds = List.copyOf(bundleIds);
  }
}
