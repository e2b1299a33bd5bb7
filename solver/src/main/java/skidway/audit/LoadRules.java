package skidway.audit;

import java.util.List;
import java.util.Optional;
import skidway.audit.plane.Rectangle;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.Zone;
import skidway.timber.Bundle;

/**
 * Checks what a stack, a rack or a bundle that waits weighs: on its spot, on the part of the deck
 * beneath it, and with all else on the same deck or yard.
 */
final class LoadRules {
  private final Scene scene;
  private final Ledger ledger;
  private final double reachM;

  LoadRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
    this.reachM = scene.setting(Setting.BEARER_REACH);
  }

  void check() {
    List<Standing> all = scene.allStandings().stream().filter(s -> !s.bundles().isEmpty()).toList();
    for (Standing standing : all) {
      spotMass(standing);
      deck(standing).ifPresent(deck -> zoneLoad(standing, deck));
    }
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        bearingApart(all.get(i), all.get(j));
      }
    }
    scene.task().site().zones().forEach(this::zoneTotal);
  }

  private void spotMass(Standing standing) {
    standing
        .spot()
        .massLimitKg()
        .ifPresent(
            limitKg ->
                ledger.most(
                    Rule.SPOT_MASS,
                    standing.id(),
                    standing.massKg(),
                    limitKg,
                    mass -> standing.name() + " weighs " + mass));
  }

  private void zoneLoad(Standing standing, Deck deck) {
    ledger.most(
        Rule.ZONE_LOAD,
        standing.id(),
        Gravity.kpa(standing.massKg(), loadedM2(standing)),
        deck.allowedKpa(),
        load -> standing.name() + " puts " + load + " on " + deck.id());
  }

  /** The lowest bundle, as wide as its bearers spread it; a rack its whole floor. */
  private double loadedM2(Standing standing) {
    if (standing.rack()) {
      return standing.spot().footprint().areaM2();
    }
    Bearing bearing = Bearing.of(standing);
    return bearing.bundle().lengthM() * bearing.spreadM(reachM);
  }

  private void bearingApart(Standing a, Standing b) {
    boolean oneDeck = deck(a).isPresent() && deck(a).equals(deck(b));
    boolean onePlace = a.id().equals(b.id());
    if (oneDeck && !onePlace && Soundness.sound(a.spot()) && Soundness.sound(b.spot())) {
      ledger.apart(
          Rule.BEARING_APART,
          a.id() + ", " + b.id(),
          Rectangle.of(bearing(a)).separation(Rectangle.of(bearing(b))),
          overlap ->
              ("The bearers of " + a.id() + " and " + b.id() + " spread their loads over the same ")
                  + (overlap + " of " + a.spot().zoneId() + "."));
    }
  }

  /** The most of a deck that a stack's load may be counted over. */
  private Footprint bearing(Standing standing) {
    Footprint place = standing.spot().footprint();
    if (standing.rack()) {
      return place;
    }
    Bundle bottom = standing.bundles().get(0);
    return place.resized(bottom.lengthM(), bottom.widthM() + 2 * reachM);
  }

  /** Counts every bundle that ever lies there, each once, also those that only wait. */
  private void zoneTotal(Zone zone) {
    double massKg =
        scene.allStandings().stream()
            .filter(standing -> standing.spot().zoneId().equals(zone.id()))
            .flatMap(standing -> standing.bundles().stream())
            .distinct()
            .mapToDouble(bundle -> bundle.mass().highKg())
            .sum();
    zone.totalKg()
        .ifPresent(
            totalKg ->
                ledger.most(
                    Rule.ZONE_TOTAL,
                    zone.id(),
                    massKg,
                    totalKg,
                    mass -> "All that lies on " + zone.id() + " weighs " + mass));
  }

  private static Optional<Deck> deck(Standing standing) {
    return standing.zone().filter(Deck.class::isInstance).map(Deck.class::cast);
  }
}
