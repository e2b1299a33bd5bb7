package skidway.layout;

import java.util.ArrayList;
import java.util.List;
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
  public List<Breach> breaches(Spot spot) {
    List<Breach> found = new ArrayList<>();
    for (Kept kept : places) {
      if (kept.area.meets(spot.footprint())) {
        found.add(breach(spot, kept, -kept.area.overlapM(spot.footprint())));
      } else if (kept.area.isNearer(spot.footprint(), kept.marginM)) {
        found.add(breach(spot, kept, kept.area.gapM(spot.footprint())));
      }
    }
    return found;
  }

  private static Breach breach(Spot spot, Kept kept, double valueM) {
    return new Breach(Rule.KEEP_CLEAR, spot.id(), kept.name, valueM, kept.marginM);
  }
}
