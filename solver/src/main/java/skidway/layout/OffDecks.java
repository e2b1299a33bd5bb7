package skidway.layout;

import java.util.List;
import skidway.geometry.Area;
import skidway.site.Deck;
import skidway.site.Site;
import skidway.site.Spot;

/** Keeps spots of a zone off decks that the zone's outline happens to cover. */
final class OffDecks {
  private record Floor(String zoneId, Area area) {}

  private final List<Floor> floors;

  OffDecks(Site site) {
    floors =
        site.decks().stream()
            .map((Deck deck) -> new Floor(deck.id(), Area.of(deck.outline())))
            .toList();
  }

  boolean allows(Spot spot) {
    return floors.stream()
        .noneMatch(
            floor -> !floor.zoneId.equals(spot.zoneId()) && floor.area.meets(spot.footprint()));
  }
}
