package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import skidway.geometry.CentreLine;
import skidway.rules.Rule;
import skidway.site.Site;
import skidway.site.Spot;

/** Checks lanesClear: a stack stays half a lane's width off its centre line. */
final class LanesClear implements PlacementCheck {
  private record Way(String lane, CentreLine line, double halfWidthM) {}

  private final List<Way> ways;

  LanesClear(Site site) {
    ways =
        site.lanes().stream()
            .map(l -> new Way("lane " + l.id(), CentreLine.of(l.centreLine()), l.widthM() / 2))
            .toList();
  }

  @Override
  public List<Finding> findings(Spot spot) {
    List<Finding> found = new ArrayList<>();
    for (Way way : ways) {
      if (way.line.isNearer(spot.footprint(), way.halfWidthM)) {
        found.add(
            new Finding(
                Rule.LANES_CLEAR, way.lane, () -> way.line.gapM(spot.footprint()), way.halfWidthM));
      }
    }
    return found;
  }
}
