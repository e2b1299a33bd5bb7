package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;
import skidway.geometry.Area;
import skidway.rules.Rule;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.KeepClear;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.TruckStand;
import skidway.site.Zone;

/**
 * Checks insideZone. On a deck the strip lies on the deck too; beside a yard it may lie anywhere on
 * the site where people can stand. A stack meets no deck but its own zone, also where a yard's
 * outline covers the deck: what it weighs would be judged by the wrong allowance.
 */
final class InsideZone implements PlacementCheck {
  private final Site site;
  private final Area boundary;
  private final Map<String, Area> zones = new TreeMap<>();
  private final Map<String, Area> decks = new TreeMap<>();
  private final Map<String, Area> blocked = new TreeMap<>();

  InsideZone(Site site) {
    this.site = site;
    boundary = Area.of(site.boundary());
    for (Zone zone : site.zones()) {
      zones.put(zone.id(), Area.of(zone.outline()));
    }
    for (Deck deck : site.decks()) {
      decks.put(deck.id(), Area.of(deck.outline()));
      blocked.put("deck " + deck.id(), Area.of(deck.outline()));
    }
    for (TruckStand stand : site.truckStands()) {
      blocked.put("truck stand " + stand.id(), Area.of(stand.area().outline()));
    }
    for (KeepClear keepClear : site.keepClears()) {
      if (!keepClear.walkable()) {
        blocked.put("keep-clear " + keepClear.id(), Area.of(keepClear.outline()));
      }
    }
  }

  @Override
  public List<Finding> findings(Spot spot) {
    Zone zone = site.zone(spot.zoneId()).orElse(null);
    Area area = zones.get(spot.zoneId());
    if (zone == null || area == null) {
      return List.of(new Finding(Rule.KNOWN, "zone " + spot.zoneId(), () -> 0, 1));
    }
    List<Finding> found = new ArrayList<>();
    addBeyond(found, "edge of " + zone.id(), area, spot.footprint());
    decks.forEach(
        (id, deck) -> {
          if (!id.equals(zone.id()) && deck.meets(spot.footprint())) {
            found.add(finding("deck " + id, () -> -deck.overlapM(spot.footprint()), 0));
          }
        });
    if (zone instanceof Deck) {
      addBeyond(found, "edge of " + zone.id() + " (open strip)", area, spot.strip());
    } else {
      addBeyond(found, "site boundary (open strip)", boundary, spot.strip());
      blocked.forEach(
          (name, obstacle) -> {
            if (obstacle.meets(spot.strip())) {
              found.add(finding(name + " (open strip)", () -> -obstacle.overlapM(spot.strip()), 0));
            }
          });
    }
    return found;
  }

  private static void addBeyond(
      List<Finding> found, String against, Area area, Footprint footprint) {
    if (!area.contains(footprint)) {
      found.add(finding(against, () -> -area.beyondM(footprint), 0));
    }
  }

  private static Finding finding(String against, DoubleSupplier valueM, double limitM) {
    return new Finding(Rule.INSIDE_ZONE, against, valueM, limitM);
  }
}
