package skidway.audit;

import skidway.audit.plane.Polygon;
import skidway.audit.plane.Rectangle;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Deck;
import skidway.site.FloorOpening;
import skidway.site.KeepClear;
import skidway.site.Site;
import skidway.site.TruckStand;
import skidway.site.Yard;
import skidway.site.Zone;

/** Checks that a spot and its open strip lie on their zone and back from openings. */
final class ZoneRules {
  private final Scene scene;
  private final Site site;
  private final Ledger ledger;

  ZoneRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.site = scene.task().site();
    this.ledger = ledger;
  }

  void check() {
    for (Place place : scene.places()) {
      site.zone(place.spot().zoneId()).ifPresent(zone -> insideZone(place, zone));
      site.decks().stream()
          .flatMap(deck -> deck.openings().stream())
          .forEach(opening -> floorOpening(place, opening));
    }
  }

  private void insideZone(Place place, Zone zone) {
    double insetM = Polygon.of(zone.outline()).inset(place.footprint());
    ledger.apart(
        Rule.INSIDE_ZONE,
        place.id(),
        insetM,
        d -> place.capitalName() + " sticks out of " + zone.id() + " by " + d + ".");
    site.decks().stream()
        .filter(deck -> !deck.id().equals(zone.id()))
        .forEach(deck -> offOtherDeck(place, deck));
    if (zone instanceof Deck deck) {
      stripWithin(place, "deck " + deck.id(), Polygon.of(deck.outline()));
    } else if (zone instanceof Yard) {
      yardStrip(place);
    }
  }

  /** Also where a yard's outline covers the deck, whose allowance would not be asked for. */
  private void offOtherDeck(Place place, Deck deck) {
    ledger.apart(
        Rule.INSIDE_ZONE,
        place.id(),
        Polygon.of(deck.outline()).separation(place.footprint()),
        d -> place.capitalName() + " stands " + d + " within " + deck.id() + ", not its zone.");
  }

  private void yardStrip(Place place) {
    stripWithin(place, "the site", Polygon.of(site.boundary()));
    for (Deck deck : site.decks()) {
      stripOff(place, deck.id(), Polygon.of(deck.outline()).separation(place.strip()));
    }
    for (TruckStand stand : site.truckStands()) {
      double apartM = Rectangle.of(stand.area()).separation(place.strip());
      stripOff(place, "truck stand " + stand.id(), apartM);
    }
    for (KeepClear keepClear : site.keepClears()) {
      if (!keepClear.walkable()) {
        double apartM = Polygon.of(keepClear.outline()).separation(place.strip());
        stripOff(place, "keep-clear " + keepClear.id(), apartM);
      }
    }
  }

  private void floorOpening(Place place, FloorOpening opening) {
    Polygon hole = Polygon.of(opening.outline());
    double apartM = hole.separation(place.footprint());
    double setbackM = scene.setting(Setting.OPENING_SETBACK);
    if (apartM >= -Ledger.LENGTH_TOLERANCE_M) {
      ledger.least(
          Rule.FLOOR_OPENING,
          place.id(),
          apartM,
          setbackM,
          d -> place.capitalName() + " stands " + d + " from floor opening " + opening.id());
    } else {
      ledger.apart(
          Rule.FLOOR_OPENING,
          place.id(),
          apartM,
          d -> place.capitalName() + " reaches " + d + " over floor opening " + opening.id() + ".");
    }
    ledger.apart(
        Rule.FLOOR_OPENING,
        place.id(),
        hole.separation(place.strip()),
        d ->
            "The open side of "
                + place.name()
                + " reaches "
                + d
                + " over floor opening "
                + opening.id()
                + ".");
  }

  private void stripWithin(Place place, String area, Polygon outline) {
    ledger.apart(
        Rule.INSIDE_ZONE,
        place.id(),
        outline.inset(place.strip()),
        d -> "The open side of " + place.name() + " sticks out of " + area + " by " + d + ".");
  }

  private void stripOff(Place place, String what, double apartM) {
    ledger.apart(
        Rule.INSIDE_ZONE,
        place.id(),
        apartM,
        d -> "The open side of " + place.name() + " reaches " + d + " into " + what + ".");
  }
}
