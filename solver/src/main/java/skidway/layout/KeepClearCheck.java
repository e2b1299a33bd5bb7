package skidway.layout;

import java.util.List;
import skidway.rules.Rule;
import skidway.site.KeepClear;
import skidway.site.Site;
import skidway.site.Spot;

/**
 * Checks keepClear: a stack stays off every keep-clear and its margin.
 *
 * @see ExcavationEdge for those that are dug
 */
final class KeepClearCheck implements PlacementCheck {
  private final List<KeptOff> places;

  KeepClearCheck(Site site) {
    places =
        site.keepClears().stream()
            .filter((KeepClear k) -> !k.excavation())
            .map(k -> KeptOff.of(Rule.KEEP_CLEAR, k, k.marginM()))
            .toList();
  }

  @Override
  public List<Finding> findings(Spot spot) {
    return KeptOff.findings(places, spot);
  }
}
