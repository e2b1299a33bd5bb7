package skidway.layout;

import java.util.List;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.site.Spot;

/**
 * Tells which placement rules a spot breaks: those that depend on the site alone, not on what lies
 * on the spot or beside it. What touches within a millimetre is allowed.
 *
 * @see Exclusion for how spots lie to each other
 */
public final class LegalSpots {
  private final List<PlacementCheck> checks;

  private LegalSpots(List<PlacementCheck> checks) {
    this.checks = checks;
  }

  public static LegalSpots of(Site site, Settings settings) {
    return new LegalSpots(
        List.of(
            new InsideZone(site, settings),
            new FloorOpeningCheck(site, settings),
            new WorkingStrip(site, settings),
            new LanesClear(site),
            new TruckClear(site),
            new MachineClear(site, settings),
            new KeepClearCheck(site)));
  }

  public boolean isLegal(Spot spot) {
    for (PlacementCheck check : checks) {
      if (!check.findings(spot).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** Every placement rule the spot breaks, in the order of the rules. */
  public List<Breach> breaches(Spot spot) {
    return checks.stream()
        .flatMap(check -> check.findings(spot).stream())
        .map(finding -> finding.measured(spot.id()))
        .toList();
  }
}
