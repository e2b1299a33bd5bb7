package skidway.layout;

import skidway.geometry.Rectangle;
import skidway.rules.Settings;
import skidway.site.Footprint;
import skidway.site.Site;
import skidway.site.Spot;

/**
 * Tells whether a spot may become a candidate: it keeps the placement rules without using up what
 * counts as touching.
 */
final class Candidacy {
  private final LegalSpots legal;

  Candidacy(Site site, Settings settings) {
    legal = LegalSpots.of(site, settings);
  }

  boolean allows(Spot spot) {
    return legal.isLegal(grown(spot));
  }

  /** The spot a touch larger all round. */
  private static Spot grown(Spot spot) {
    double by = 2 * Rectangle.TOUCH_M;
    Footprint footprint = spot.footprint();
    return new Spot(
        spot.id(),
        spot.zoneId(),
        spot.kind(),
        footprint.resized(footprint.lengthM() + by, footprint.widthM() + by),
        spot.openSide(),
        spot.stripM(),
        spot.massLimitKg());
  }
}
