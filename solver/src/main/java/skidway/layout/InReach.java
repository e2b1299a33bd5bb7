package skidway.layout;

import java.util.Comparator;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.timber.Delivery;

/**
 * Tells whether the machine can put the lightest bundle down at a place at all; a spot where it
 * cannot is of no use.
 */
final class InReach {
  private final Machine machine;
  private final double farthestM;

  InReach(Site site, Delivery delivery) {
    machine = site.machine();
    double lightestKg =
        delivery.bundles().stream().mapToDouble(b -> b.mass().highKg()).min().orElse(0);
    farthestM =
        machine.chart().stream()
            .filter(row -> row.capacityKg() >= lightestKg)
            .max(Comparator.comparingDouble(ChartRow::reachM))
            .map(ChartRow::reachM)
            .orElse(0.0);
  }

  boolean allows(Spot spot) {
    if (machine.isNone()) {
      return true; // people carry timbers anywhere they can walk
    }
    return machine.stands().stream()
        .anyMatch(stand -> stand.at().distanceTo(spot.footprint().centre()) <= farthestM);
  }
}
