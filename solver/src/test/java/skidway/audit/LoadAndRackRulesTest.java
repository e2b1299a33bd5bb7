package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.PlanBuilder.aPlan;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Outline;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.testkit.BundleBuilder;
import skidway.testkit.PlanBuilder;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

final class LoadAndRackRulesTest {
  private static final Spot ON_DECK = spot("D1", "deck", 15, 19.5, 4, 0.9);

  private static List<String> broken(Rule rule, Spot spot, BundleBuilder... bundles) {
    return broken(rule, Settings.defaults(), spot, bundles);
  }

  private static List<String> broken(
      Rule rule, Settings settings, Spot spot, BundleBuilder... builders) {
    Bundle[] bundles = List.of(builders).stream().map(BundleBuilder::build).toArray(Bundle[]::new);
    Task task = task(aSite().build(), settings, bundles);
    String[] ids = List.of(bundles).stream().map(b -> b.id()).toArray(String[]::new);
    return Audited.sentences(rule, task, aPlan().stack(spot, ids));
  }

  private static Spot carrying(Spot spot, double kg) {
    return new Spot(
        spot.id(),
        spot.zoneId(),
        spot.kind(),
        spot.footprint(),
        spot.openSide(),
        spot.stripM(),
        OptionalDouble.of(kg));
  }

  @Test
  void spotMassAddsUpAllBundlesAlsoInARack() {
    BundleBuilder one = aBundle("B1").load("L1", 1).weighing(300);
    BundleBuilder other = aBundle("B2").load("L1", 2).weighing(200);
    assertThat(broken(Rule.SPOT_MASS, carrying(ON_DECK, 500), one, other)).isEmpty();
    assertThat(broken(Rule.SPOT_MASS, carrying(ON_DECK, 499), one, other))
        .containsExactly("Stack D1 weighs 500 kg, limit 499 kg.");
    Spot rack = carrying(rack("R1", "yard", 10, 8, 2, 1), 499);
    assertThat(broken(Rule.SPOT_MASS, rack, one, other))
        .containsExactly("Rack R1 weighs 500 kg, limit 499 kg.");
  }

  @Test
  void zoneLoadIsOverTheBottomBundleNotTheSpot() {
    // 2.4 kPa on 4 by 0.6 m carry 2.4 * 2.4 / 9.80665 = 0.58735 t.
    assertThat(broken(Rule.ZONE_LOAD, ON_DECK, aBundle("B1").weighing(587.3))).isEmpty();
    assertThat(broken(Rule.ZONE_LOAD, ON_DECK, aBundle("B1").weighing(620)))
        .containsExactly("Stack D1 puts 2.5 kPa on deck, limit 2.4 kPa.");
  }

  @Test
  void zoneLoadCountsHowFarBearersReach() {
    Settings reaching = Settings.defaults().with(Setting.BEARER_REACH, 0.1, "long bearers");
    Task task = task(aSite().build(), reaching, aBundle("B1").weighing(620).build());
    // Bearers as wide as the bundle spread nothing; longer ones count as far as they reach.
    assertThat(broken(Rule.ZONE_LOAD, reaching, ON_DECK, aBundle("B1").weighing(620))).hasSize(1);
    assertThat(Audited.sentences(Rule.ZONE_LOAD, task, onBearers(0.7))).isEmpty();
    assertThat(Audited.sentences(Rule.ZONE_LOAD, task, onBearers(9))).isEmpty();
    Task heavy = task(aSite().build(), reaching, aBundle("B1").weighing(800).build());
    assertThat(Audited.sentences(Rule.ZONE_LOAD, heavy, onBearers(9)))
        .containsExactly("Stack D1 puts 2.5 kPa on deck, limit 2.4 kPa.");
  }

  /** Other bearers than the builder lays. */
  private static PlanBuilder onBearers(double lengthM) {
    return aPlan()
        .stack(ON_DECK, "B1")
        .bearers(row -> new BearerRow(row.count(), row.spacingM(), row.endM(), lengthM));
  }

  @Test
  void zoneLoadIsForDecksAlone() {
    Spot yard = spot("Y1", "yard", 10, 8, 4.5, 0.9);
    Task task =
        task(
            aSite().yards(new Yard("yard", Outline.box(5, 6, 30, 12), 0.1)).build(),
            aBundle("B1").weighing(620).build());
    assertThat(Audited.sentences(Rule.ZONE_LOAD, task, aPlan().stack(yard, "B1"))).isEmpty();
  }

  @Test
  void zoneLoadOfARackIsOverItsFloor() {
    Spot rack = rack("D1", "deck", 15, 20, 1, 0.5);
    assertThat(broken(Rule.ZONE_LOAD, rack, aBundle("B1").weighing(122))).isEmpty();
    assertThat(broken(Rule.ZONE_LOAD, rack, aBundle("B1").weighing(130)))
        .containsExactly("Rack D1 puts 2.5 kPa on deck, limit 2.4 kPa.");
  }

  @Test
  void rackLengthTakesPiecesOfExactlyTheLimit() {
    Spot rack = rack("R1", "yard", 10, 8, 1, 0.5);
    assertThat(broken(Rule.RACK_LENGTH, rack, aBundle("B1").piece("W1", 1, 1, 1.22))).isEmpty();
    assertThat(broken(Rule.RACK_LENGTH, rack, aBundle("B1").piece("W1", 1, 1, 1.3)))
        .containsExactly("W1-C1-1 of B1 in rack R1 is 1.30 m, limit 1.22 m.");
    assertThat(broken(Rule.RACK_LENGTH, ON_DECK, aBundle("B1").piece("W1", 1, 1, 4))).isEmpty();
  }

  @Test
  void rackRoomAddsUpSectionsOverAllBundles() {
    // Each piece stands on 0.2 by 0.15 = 0.03 m²; five of six tenths of 0.25 m² are 0.15 m².
    Spot rack = rack("R1", "yard", 10, 8, 0.5, 0.5);
    BundleBuilder four = pieces("B1", 4);
    assertThat(broken(Rule.RACK_ROOM, rack, four, pieces("B2", 1))).isEmpty();
    assertThat(broken(Rule.RACK_ROOM, rack, four, pieces("B2", 2)))
        .containsExactly("The pieces on end in rack R1 cover 0.72 of its floor, limit 0.60.");
  }

  @Test
  void aRackHasNoTiers() {
    Spot rack = rack("R1", "yard", 10, 8, 0.5, 0.5);
    BundleBuilder tall = aBundle("B1").load("L1", 1).size(5, 2, 3);
    for (Rule rule :
        List.of(Rule.FITS_SPOT, Rule.STACK_HEIGHT, Rule.STACK_SLENDER, Rule.TIER_SUPPORT)) {
      assertThat(broken(rule, rack, tall, aBundle("B2").load("L1", 2).size(9, 3, 3))).isEmpty();
    }
  }

  private static BundleBuilder pieces(String id, int count) {
    BundleBuilder bundle = aBundle(id);
    for (int position = 1; position <= count; position++) {
      bundle.piece(id.equals("B1") ? "W1" : "W3", 1, position, 0.5);
    }
    return bundle;
  }
}
