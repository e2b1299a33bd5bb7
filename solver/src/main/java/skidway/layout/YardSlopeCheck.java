package skidway.layout;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.site.Spot;

/** Checks yardSlope: no stack stands on a yard that was measured and found too steep. */
final class YardSlopeCheck implements PlacementCheck {
  private static final double TOLERANCE = 1e-9;

  private final Map<String, List<Finding>> steep = new TreeMap<>();

  YardSlopeCheck(Site site, Settings settings) {
    double limit = settings.get(Setting.YARD_SLOPE);
    site.yards().stream()
        .filter(yard -> yard.slope().orElse(0) > limit + TOLERANCE)
        .forEach(
            yard ->
                steep.put(
                    yard.id(),
                    List.of(
                        new Finding(
                            Rule.YARD_SLOPE,
                            "yard " + yard.id(),
                            yard.slope()::getAsDouble,
                            limit))));
  }

  @Override
  public List<Finding> findings(Spot spot) {
    return steep.getOrDefault(spot.zoneId(), List.of());
  }
}
