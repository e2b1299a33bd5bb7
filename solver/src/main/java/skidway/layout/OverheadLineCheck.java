package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import skidway.geometry.CentreLine;
import skidway.rules.Rule;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.site.Spot;

/** Checks overheadLine: seen from above, a stack stays out of a power line's clearance. */
final class OverheadLineCheck implements PlacementCheck {
  private record Wire(String name, CentreLine line, double clearanceM) {}

  private final List<Wire> wires;

  OverheadLineCheck(Site site, Settings settings) {
    wires =
        site.overheadLines().stream()
            .map(
                l ->
                    new Wire(
                        "overhead line " + l.id(),
                        CentreLine.of(List.of(l.from(), l.to())),
                        LineClearance.metres(l, settings)))
            .toList();
  }

  @Override
  public List<Finding> findings(Spot spot) {
    List<Finding> found = new ArrayList<>();
    for (Wire wire : wires) {
      if (wire.line.isNearer(spot.footprint(), wire.clearanceM)) {
        found.add(
            new Finding(
                Rule.OVERHEAD_LINE,
                wire.name,
                () -> wire.line.gapM(spot.footprint()),
                wire.clearanceM));
      }
    }
    return found;
  }
}
