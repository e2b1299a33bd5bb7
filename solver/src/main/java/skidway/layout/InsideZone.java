package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import skidway.geometry.Area;
import skidway.geometry.Rectangle;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.KeepClear;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.TruckStand;
import skidway.site.Zone;

/**
 * Checks insideZone. On a deck the stack keeps back from the edge and the strip lies on the deck;
 * beside a yard the strip may lie anywhere on the site where people can stand.
 */
final class InsideZone implements PlacementCheck {
  private final Site site;
  private final double edgeSetbackM;
  private final Area boundary;
  private final Map<String, Area> zones = new TreeMap<>();
  private final Map<String, Area> blocked = new TreeMap<>();

  InsideZone(Site site, Settings settings) {
    this.site = site;
    edgeSetbackM = settings.get(Setting.DECK_EDGE_SETBACK);
    boundary = Area.of(site.boundary());
    for (Zone zone : site.zones()) {
      zones.put(zone.id(), Area.of(zone.outline()));
    }
    for (Deck deck : site.decks()) {
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
  public List<Breach> breaches(Spot spot) {
    Zone zone = site.zone(spot.zoneId()).orElse(null);
    Area area = zones.get(spot.zoneId());
    if (zone == null || area == null) {
      return List.of(new Breach(Rule.KNOWN, spot.id(), "zone " + spot.zoneId(), 0, 1));
    }
    List<Breach> found = new ArrayList<>();
    addBeyond(found, spot, "edge of " + zone.id(), area, spot.footprint());
    if (zone instanceof Deck) {
      if (found.isEmpty() && area.isEdgeNearer(spot.footprint(), edgeSetbackM)) {
        double gapM = area.edgeGapM(spot.footprint());
        found.add(breach(spot, "edge of " + zone.id(), gapM, edgeSetbackM));
      }
      addBeyond(found, spot, "edge of " + zone.id() + " (open strip)", area, spot.strip());
    } else {
      addBeyond(found, spot, "site boundary (open strip)", boundary, spot.strip());
      blocked.forEach(
          (name, obstacle) -> {
            if (obstacle.meets(spot.strip())) {
              double overlapM = obstacle.overlapM(spot.strip());
              found.add(breach(spot, name + " (open strip)", -overlapM, 0));
            }
          });
    }
    return found;
  }

  private static void addBeyond(
      List<Breach> found, Spot spot, String against, Area area, Footprint footprint) {
    if (!area.contains(footprint)) {
      double beyondM = Math.max(Rectangle.TOUCH_M, area.beyondM(footprint));
      found.add(breach(spot, against, -beyondM, 0));
    }
  }

  private static Breach breach(Spot spot, String against, double valueM, double limitM) {
    return new Breach(Rule.INSIDE_ZONE, spot.id(), against, valueM, limitM);
  }
}
