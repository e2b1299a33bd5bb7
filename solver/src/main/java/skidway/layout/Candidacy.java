package skidway.layout;

import java.util.List;
import skidway.geometry.Area;
import skidway.geometry.Rectangle;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.Site;
import skidway.site.Spot;

/**
 * Tells whether a spot may become a candidate: it keeps the placement rules without using up what
 * counts as touching, and it does not lie on a deck that a yard's outline happens to cover.
 */
final class Candidacy {
  private record Floor(String zoneId, Area area) {}

  private final LegalSpots legal;
  private final List<Floor> floors;

  Candidacy(Site site, Settings settings) {
    legal = LegalSpots.of(site, settings);
    floors =
        site.decks().stream()
            .map((Deck deck) -> new Floor(deck.id(), Area.of(deck.outline())))
            .toList();
  }

  boolean allows(Spot spot) {
    Spot grown = grown(spot);
    return legal.isLegal(grown)
        && floors.stream()
            .noneMatch(f -> !f.zoneId.equals(spot.zoneId()) && f.area.meets(grown.footprint()));
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
