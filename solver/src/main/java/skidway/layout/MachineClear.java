package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import skidway.geometry.CentreLine;
import skidway.geometry.Rectangle;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.site.Spot;

/** Checks machineClear: a stack leaves room around each point the machine lifts from. */
final class MachineClear implements PlacementCheck {
  private record Stand(String name, CentreLine point) {}

  private final List<Stand> stands;
  private final double roomM;

  MachineClear(Site site, Settings settings) {
    roomM = settings.get(Setting.MACHINE_STAND_ROOM);
    stands =
        site.machine().stands().stream()
            .map(s -> new Stand("machine stand " + s.id(), CentreLine.of(List.of(s.at(), s.at()))))
            .toList();
  }

  @Override
  public List<Finding> findings(Spot spot) {
    List<Finding> found = new ArrayList<>();
    Rectangle covered = Rectangle.of(spot.footprint());
    for (Stand stand : stands) {
      if (stand.point.isNearer(covered, roomM)) {
        found.add(
            new Finding(
                Rule.MACHINE_CLEAR, stand.name, () -> stand.point.gapM(spot.footprint()), roomM));
      }
    }
    return found;
  }
}
