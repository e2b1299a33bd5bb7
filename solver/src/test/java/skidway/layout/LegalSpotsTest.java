package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.layout.Placing.SETTINGS;
import static skidway.layout.Placing.checkBreach;
import static skidway.layout.Placing.checkBroken;
import static skidway.layout.Placing.checkLegal;
import static skidway.layout.Placing.deckSpot;
import static skidway.layout.Placing.openDown;
import static skidway.layout.Placing.yardSpot;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.testkit.SiteBuilder;

/**
 * Each rule three times: broken and measured, exactly at the limit, and with nothing near. Spots
 * are 4 by 0.6 m along the x axis with an open strip of 0.91 m to the north.
 */
class LegalSpotsTest {
  @Test
  void insideZoneInAYard() {
    SiteBuilder site = aSite();
    checkLegal(site, yardSpot(7, 6.3));
    checkBroken(site, yardSpot(6.9, 6.3), Rule.INSIDE_ZONE, -0.1, 0);
    checkBroken(site, yardSpot(7, 6.2), Rule.INSIDE_ZONE, -0.1, 0);
  }

  @Test
  void insideZoneOfAStripBesideAYard() {
    // The strip of a stack at the yard's north edge lies outside the yard, which is allowed.
    checkLegal(aSite(), yardSpot(12, 11.7));
    checkLegal(
        aSite().keepClear("K", Outline.box(10, 12.91, 12, 13.5), 0, false), yardSpot(12, 11.7));
    checkBroken(
        aSite().keepClear("K", Outline.box(10, 12.71, 12, 13.5), 0, false),
        yardSpot(12, 11.7),
        Rule.INSIDE_ZONE,
        -0.2,
        0);
    checkLegal(
        aSite().keepClear("K", Outline.box(10, 12.71, 12, 13.5), 0, true), yardSpot(12, 11.7));
    Yard atDeck = new Yard("yard", Outline.box(25, 10, 40, 27.8), 70);
    checkBroken(aSite().yards(atDeck), yardSpot(35, 27), Rule.INSIDE_ZONE, -0.21, 0);
  }

  @Test
  void insideZoneOnADeck() {
    checkBroken(aSite().walls(), deckSpot(9.9 + 1.9, 20), Rule.INSIDE_ZONE, -0.1, 0);
  }

  @Test
  void insideZoneOffADeckThatTheYardCovers() {
    // The yard goes all round and under the deck, whose south edge lies at y = 15.9, and under a
    // porch.
    SiteBuilder site =
        aSite()
            .walls()
            .yards(new Yard("yard", Outline.box(1, 1, 39, 27), 70))
            .porch("porch", Outline.box(25, 10, 30, 14));
    checkLegal(site, spotTo("yard", 15.9));
    checkBroken(site, spotTo("yard", 16), Rule.INSIDE_ZONE, -0.1, 0);
    checkBroken(site, openDown("yard", 15, 20), Rule.INSIDE_ZONE, -0.6, 0);
    checkLegal(site, yardSpot(25 - 2, 12));
    checkBroken(site, yardSpot(25 - 2 + 0.2, 12), Rule.INSIDE_ZONE, -0.2, 0);
    checkLegal(site, yardSpot(8, 4));
  }

  @Test
  void insideZoneOfOneDeckOffAnother() {
    SiteBuilder far = aSite().walls().porch("porch", Outline.box(25, 10, 30, 14));
    checkLegal(far, deckSpot(15, 20));
    SiteBuilder touching = aSite().walls().porch("porch", Outline.box(17, 19, 19, 21));
    checkLegal(touching, deckSpot(15, 20));
    SiteBuilder under = aSite().walls().porch("porch", Outline.box(16.8, 19, 19, 21));
    checkBroken(under, deckSpot(15, 20), Rule.INSIDE_ZONE, -0.2, 0);
  }

  @Test
  void unknownZone() {
    assertThat(LegalSpots.of(aSite().build(), SETTINGS).breaches(spot("A", "roof", 9, 9, 4, 0.6)))
        .extracting(Breach::rule)
        .containsExactly(Rule.KNOWN);
  }

  @Test
  void floorOpening() {
    SiteBuilder site = aSite().walls().floorOpening("stair", Outline.box(17, 19, 18, 20));
    double westOf = 17 - 2;
    checkLegal(site, deckSpot(westOf - 1.829, 19.5));
    checkBroken(site, deckSpot(westOf - 1.7, 19.5), Rule.FLOOR_OPENING, 1.7, 1.829);
    checkBroken(site, deckSpot(westOf - 1.829, 19.5 - 3), Rule.DECK_EDGE, 0.3, 1.2);
    checkBroken(site, spot("A", "deck", 15.3, 19.5, 4, 0.6), Rule.FLOOR_OPENING, -0.3, 1.829);
  }

  @Test
  void aStripOverAFloorOpening() {
    Settings near = SETTINGS.with(Setting.OPENING_SETBACK, 0.5, "railing");
    Site site = aSite().floorOpening("stair", Outline.box(14, 20.5, 16, 21.5)).build();
    // The stack's top is at 20.0; its strip reaches to 20.91.
    List<Breach> breaches = LegalSpots.of(site, near).breaches(deckSpot(15, 19.7));
    assertThat(breaches).hasSize(1);
    checkBreach(breaches.get(0), Rule.FLOOR_OPENING, -0.41, 0);
  }

  @Test
  void workingStrip() {
    // Outside face of the south wall at y = 15.9, strip to 14.68; inside at 16.1, strip to 17.01.
    SiteBuilder site = aSite().yards(new Yard("yard", Outline.box(5, 6, 30, 15.5), 70));
    checkLegal(site, spotTo("yard", 14.68));
    checkBroken(site, spotTo("yard", 14.78), Rule.WORKING_STRIP, -0.1, 0);
    checkLegal(aSite(), deckSpot(15, 17.01 + 0.3 + 0.1));
    Settings noSetback = SETTINGS.with(Setting.DECK_EDGE_SETBACK, 0.5, "wall stands");
    List<Breach> breaches =
        LegalSpots.of(aSite().build(), noSetback).breaches(deckSpot(15, 17.01 + 0.3 - 0.2));
    assertThat(breaches).hasSize(1);
    checkBreach(breaches.get(0), Rule.WORKING_STRIP, -0.2, 0);
  }

  @Test
  void lanesClear() {
    SiteBuilder site = aSite().lane("main", 1.2, new Point(10, 4), new Point(10, 15));
    checkLegal(site, yardSpot(10 + 0.6 + 2, 9));
    checkBroken(site, yardSpot(10 + 0.5 + 2, 9), Rule.LANES_CLEAR, 0.5, 0.6);
    checkBroken(site, yardSpot(11, 9), Rule.LANES_CLEAR, 0, 0.6);
  }

  @Test
  void truckClear() {
    // The truck stands from y = 0.7 to 3.3.
    SiteBuilder site = aSite().yards(new Yard("yard", Outline.box(5, 2, 30, 12), 70));
    checkLegal(site, yardSpot(13, 3.6));
    checkBroken(site, yardSpot(13, 3.5), Rule.TRUCK_CLEAR, -0.1, 0);
  }

  @Test
  void machineClear() {
    // The machine stands at (20, 5); a spot there is 0.6 m wide.
    checkLegal(aSite(), yardSpot(20, 5 + 1.5 + 0.3));
    checkBroken(aSite(), yardSpot(20, 5 + 1.4 + 0.3), Rule.MACHINE_CLEAR, 1.4, 1.5);
    checkLegal(aSite(), yardSpot(10, 5 + 1.4 + 0.3));
  }

  @Test
  void keepClear() {
    SiteBuilder site = aSite().keepClear("tree", Outline.box(16, 8, 17, 9), 0.5, true);
    checkLegal(site, yardSpot(16 - 0.5 - 2, 8.5));
    checkBroken(site, yardSpot(16 - 0.4 - 2, 8.5), Rule.KEEP_CLEAR, 0.4, 0.5);
    checkBroken(site, yardSpot(16 - 2 + 0.2, 8.5), Rule.KEEP_CLEAR, -0.2, 0.5);
    // Over the corner the distance counts, not a square margin.
    double diagonal = 0.5 / Math.sqrt(2);
    checkLegal(site, yardSpot(16 - diagonal - 2, 8 - diagonal - 0.3));
  }

  @Test
  void aKeepClearWithoutMarginStillKeepsStacksOff() {
    SiteBuilder site = aSite().keepClear("mark", Outline.box(16, 8, 17, 9), 0, true);
    checkLegal(site, yardSpot(14, 8.5));
    checkBroken(site, yardSpot(16.5, 8.5), Rule.KEEP_CLEAR, -0.6, 0);
  }

  /** A spot open to the south whose north side lies at a height on the sheet. */
  private static Spot spotTo(String zone, double north) {
    return openDown(zone, 15, north - 0.3);
  }
}
