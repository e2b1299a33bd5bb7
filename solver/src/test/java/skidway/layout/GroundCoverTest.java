package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.site.Zone;
import skidway.timber.Bundle;
import skidway.timber.Delivery;

/** The ground of a large job is given out once, whole, by need. */
class GroundCoverTest {
  private static final Settings SETTINGS = Settings.defaults();
  private static final double LENGTH_M = 60;
  private static final double DEPTH_M = 30;

  private final Site site =
      aSite().yards(new Yard("yard", Outline.box(0, 0, LENGTH_M, DEPTH_M), 70)).build();

  private List<Spot> cover(Delivery delivery) {
    ZoneFill fill = new ZoneFill(site, SETTINGS, spot -> true, new Point(0, 0));
    List<SpotSize> sizes = SpotSizes.stacks(delivery);
    return fill.cover(site.zone("yard").orElseThrow(), new GroundDemand(sizes, delivery));
  }

  @Test
  void noSpotIsInTheWayOfAnotherAndLittleGroundIsLost() {
    List<Spot> spots = cover(bundles(3, 3, 3, 6, 6));
    Exclusion exclusion = Exclusion.of(spots, site, SETTINGS);
    assertThat(IntStream.range(0, spots.size())).allMatch(i -> exclusion.of(i).length == 0);
    // A spot takes its length and a gap one way, its width and half a strip and a gap the other.
    double gapM = SETTINGS.get(Setting.STACK_GAP);
    double acrossM = 0.6 + (SETTINGS.get(Setting.OPEN_STRIP) + gapM) / 2;
    double takenM2 =
        spots.stream().mapToDouble(s -> (s.footprint().lengthM() + gapM) * acrossM).sum();
    assertThat(takenM2 / (LENGTH_M * DEPTH_M)).isBetween(0.9, 1.01);
  }

  @Test
  void groundIsGivenOutByTheBundlesOfEachLength() {
    List<Spot> spots = cover(bundles(3, 3, 3, 6));
    long brief = spots.stream().filter(s -> s.footprint().lengthM() < 4).count();
    assertThat(brief / (double) spots.size()).isBetween(0.65, 0.85);
  }

  /** No edge of a round yard is long, and none is told by the walls alone. */
  @Test
  void aRoundYardIsCoveredToo() {
    List<Point> corners =
        IntStream.range(0, 40)
            .mapToDouble(i -> Math.toRadians(9.0 * i + 1))
            .mapToObj(a -> new Point(60 + 50 * Math.cos(a), 60 + 50 * Math.sin(a)))
            .toList();
    Site round = aSite().walls().yards(new Yard("yard", new Outline(corners), 70)).build();
    Delivery delivery = bundles(3, 6);
    ZoneFill fill = new ZoneFill(round, SETTINGS, spot -> true, new Point(0, 0));
    GroundDemand demand = new GroundDemand(SpotSizes.stacks(delivery), delivery);
    Zone yard = round.zone("yard").orElseThrow();
    assertThat(fill.cover(yard, demand)).isNotEmpty();
    assertThat(fill.fill(yard, demand.sizes().get(0), List.of(), 100)).isNotEmpty();
  }

  @Test
  void aTieGoesToTheLongerSpot() {
    Delivery delivery = bundles(3, 6);
    GroundDemand demand = new GroundDemand(SpotSizes.stacks(delivery), delivery);
    assertThat(demand.sizes()).hasSize(2);
    assertThat(demand.mostWanting()).isEqualTo(1);
    demand.served(1, 4);
    assertThat(demand.mostWanting()).isZero();
    demand.served(0, 5);
    assertThat(demand.mostWanting()).isEqualTo(1);
  }

  private static Delivery bundles(double... lengthsM) {
    List<Bundle> bundles =
        IntStream.range(0, lengthsM.length)
            .mapToObj(i -> aBundle("B" + i).size(lengthsM[i], 0.6, 0.4).build())
            .toList();
    return new Delivery(List.of(), bundles);
  }
}
