package skidway.layout;

import java.util.List;
import skidway.rules.Rule;
import skidway.rules.Settings;
import skidway.site.KeepClear;
import skidway.site.Site;
import skidway.site.Spot;

/**
 * Checks excavationEdge: a stack stays off trenches and pits by their margin, the setback and as
 * far as they are deep, whichever is most. What the soil bears is a competent person's to judge.
 */
final class ExcavationEdge implements PlacementCheck {
  private final List<KeptOff> places;

  ExcavationEdge(Site site, Settings settings) {
    places =
        site.keepClears().stream()
            .filter(KeepClear::excavation)
            .map(k -> KeptOff.of(Rule.EXCAVATION_EDGE, k, ExcavationSetback.metres(k, settings)))
            .toList();
  }

  @Override
  public List<Finding> findings(Spot spot) {
    return KeptOff.findings(places, spot);
  }
}
