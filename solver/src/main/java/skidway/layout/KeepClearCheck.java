package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import skidway.geometry.Area;
import skidway.rules.Rule;
import skidway.site.Site;
import skidway.site.Spot;

/** Checks keepClear: a stack stays off every keep-clear and its margin. */
final class KeepClearCheck implements PlacementCheck {
  private record Kept(String name, Area area, double marginM) {}

  private final List<Kept> places;

  KeepClearCheck(Site site) {
    places =
        site.keepClears().stream()
            .map(k -> new Kept("keep-clear " + k.id(), Area.of(k.outline()), k.marginM()))
            .toList();
  }

  @Override
  public List<Finding> findings(Spot spot) {
    List<Finding> found = new ArrayList<>();
    for (Kept kept : places) {
      if (kept.area.meets(spot.footprint())) {
        found.add(finding(kept, () -> -kept.area.overlapM(spot.footprint())));
      } else if (kept.area.isEdgeNearer(spot.footprint(), kept.marginM)) {
        found.add(finding(kept, () -> kept.area.gapM(spot.footprint())));
      }
    }
    return found;
  }

  private static Finding finding(Kept kept, DoubleSupplier valueM) {
    return new Finding(Rule.KEEP_CLEAR, kept.name, valueM, kept.marginM);
  }
}
