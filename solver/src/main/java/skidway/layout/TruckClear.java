package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import skidway.geometry.Rectangle;
import skidway.rules.Rule;
import skidway.site.Site;
import skidway.site.Spot;

/** Checks truckClear: no stack stands where a truck stands. */
final class TruckClear implements PlacementCheck {
  private record Stand(String name, Rectangle area) {}

  private final List<Stand> stands;

  TruckClear(Site site) {
    stands =
        site.truckStands().stream()
            .map(t -> new Stand("truck stand " + t.id(), Rectangle.of(t.area())))
            .toList();
  }

  @Override
  public List<Finding> findings(Spot spot) {
    Rectangle footprint = Rectangle.of(spot.footprint());
    List<Finding> found = new ArrayList<>();
    for (Stand stand : stands) {
      if (stand.area.meets(footprint)) {
        found.add(
            new Finding(Rule.TRUCK_CLEAR, stand.name, () -> -stand.area.overlapM(footprint), 0));
      }
    }
    return found;
  }
}
