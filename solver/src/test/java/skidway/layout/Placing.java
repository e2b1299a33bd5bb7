package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.SiteBuilder.spot;

import java.util.List;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.OpenSide;
import skidway.site.Spot;
import skidway.testkit.SiteBuilder;

/**
 * Puts spots of 4 by 0.6 m along the x axis on a site and tells which placement rules they break.
 * Their open strip of 0.91 m lies to the north, unless told.
 */
final class Placing {
  static final Settings SETTINGS =
      Settings.defaults().with(Setting.DECK_EDGE_SETBACK, 1.2, "guard along the edge");

  private Placing() {}

  static Spot yardSpot(double x, double y) {
    return spot("A", "yard", x, y, 4, 0.6);
  }

  static Spot deckSpot(double x, double y) {
    return spot("A", "deck", x, y, 4, 0.6);
  }

  static Spot openDown(String zone, double x, double y) {
    Spot open = spot("A", zone, x, y, 4, 0.6);
    return new Spot(
        open.id(),
        zone,
        open.kind(),
        open.footprint(),
        OpenSide.RIGHT,
        open.stripM(),
        open.massLimitKg());
  }

  static void checkLegal(SiteBuilder site, Spot spot) {
    LegalSpots legal = LegalSpots.of(site.build(), SETTINGS);
    assertThat(legal.breaches(spot)).isEmpty();
    assertThat(legal.isLegal(spot)).isTrue();
  }

  static void checkBroken(SiteBuilder site, Spot spot, Rule rule, double valueM, double limitM) {
    LegalSpots legal = LegalSpots.of(site.build(), SETTINGS);
    List<Breach> breaches = legal.breaches(spot);
    assertThat(breaches).isNotEmpty().allMatch(b -> b.rule() == rule);
    checkBreach(breaches.get(0), rule, valueM, limitM);
    assertThat(legal.isLegal(spot)).isFalse();
  }

  static void checkBreach(Breach breach, Rule rule, double valueM, double limitM) {
    assertThat(breach.rule()).isEqualTo(rule);
    assertThat(breach.value()).isCloseTo(valueM, within(1e-6));
    assertThat(breach.limit()).isEqualTo(limitM);
  }
}
