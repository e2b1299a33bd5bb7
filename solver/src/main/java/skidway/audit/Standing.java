package skidway.audit;

import java.util.List;
import java.util.Optional;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Zone;
import skidway.timber.Bundle;

/**
 * What a plan lets stand on a spot, as far as the job knows it.
 *
 * @param zone the deck or yard, when the site has it
 * @param bundles those of its bundles that are delivered, bottom to top
 */
record Standing(Spot spot, Optional<Zone> zone, List<Bundle> bundles) {
  Standing {
    bundles = List.copyOf(bundles);
  }

  String id() {
    return spot.id();
  }

  boolean rack() {
    return spot.kind() == SpotKind.RACK;
  }

  /** "Stack D3" or "Rack R1", to begin a sentence with. */
  String name() {
    return (rack() ? "Rack " : "Stack ") + spot.id();
  }

  double massKg() {
    return bundles.stream().mapToDouble(Bundle::massKg).sum();
  }
}
