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
  private final DeckEdge deckEdge;

  private LegalSpots(Site site, Settings settings) {
    deckEdge = new DeckEdge(site, settings);
    checks =
        List.of(
            new InsideZone(site),
            deckEdge,
            new FloorOpeningCheck(site, settings),
            new WorkingStrip(site, settings),
            new LanesClear(site),
            new TruckClear(site),
            new MachineClear(site, settings),
            new KeepClearCheck(site),
            new ExcavationEdge(site, settings),
            new OverheadLineCheck(site, settings),
            new YardSlopeCheck(site, settings));
  }

  public static LegalSpots of(Site site, Settings settings) {
    return new LegalSpots(site, settings);
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

  /**
   * Height above its deck that a stack's top, bearers included, must stay below because the walls
   * beside it are no higher (deckEdge), metres; infinite when nothing caps it.
   */
  public double heightCapM(Spot spot) {
    return deckEdge.capM(spot);
  }
}
