package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import skidway.geometry.Area;
import skidway.rules.Rule;
import skidway.site.KeepClear;
import skidway.site.Spot;

/** A keep-clear that stacks stay off, and how far. */
record KeptOff(Rule rule, String name, Area area, double marginM) {
  static KeptOff of(Rule rule, KeepClear keepClear, double marginM) {
    return new KeptOff(rule, "keep-clear " + keepClear.id(), Area.of(keepClear.outline()), marginM);
  }

  /** One finding for each of the places that the spot comes too near to. */
  static List<Finding> findings(List<KeptOff> places, Spot spot) {
    List<Finding> found = new ArrayList<>();
    for (KeptOff place : places) {
      Area area = place.area;
      if (area.meets(spot.footprint())) {
        found.add(
            new Finding(
                place.rule, place.name, () -> -area.overlapM(spot.footprint()), place.marginM));
      } else if (area.isEdgeNearer(spot.footprint(), place.marginM)) {
        found.add(
            new Finding(place.rule, place.name, () -> area.gapM(spot.footprint()), place.marginM));
      }
    }
    return found;
  }
}
