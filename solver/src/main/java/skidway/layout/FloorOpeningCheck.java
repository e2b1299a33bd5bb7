package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;
import skidway.geometry.Area;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.site.Spot;

/** Checks floorOpening: the stack keeps its distance, the open strip does not reach over a hole. */
final class FloorOpeningCheck implements PlacementCheck {
  private final double setbackM;
  private final Map<String, Area> openings = new TreeMap<>();

  FloorOpeningCheck(Site site, Settings settings) {
    setbackM = settings.get(Setting.OPENING_SETBACK);
    site.decks().stream()
        .flatMap(deck -> deck.openings().stream())
        .forEach(o -> openings.put("floor opening " + o.id(), Area.of(o.outline())));
  }

  @Override
  public List<Finding> findings(Spot spot) {
    List<Finding> found = new ArrayList<>();
    openings.forEach(
        (name, opening) -> {
          if (opening.meets(spot.footprint())) {
            found.add(finding(name, () -> -opening.overlapM(spot.footprint()), setbackM));
          } else if (opening.isEdgeNearer(spot.footprint(), setbackM)) {
            found.add(finding(name, () -> opening.gapM(spot.footprint()), setbackM));
          }
          if (opening.meets(spot.strip())) {
            found.add(finding(name + " (open strip)", () -> -opening.overlapM(spot.strip()), 0));
          }
        });
    return found;
  }

  private static Finding finding(String against, DoubleSupplier valueM, double limitM) {
    return new Finding(Rule.FLOOR_OPENING, against, valueM, limitM);
  }
}
