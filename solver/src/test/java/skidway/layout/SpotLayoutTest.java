package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Yard;
import skidway.timber.Bundle;
import skidway.timber.Delivery;

class SpotLayoutTest {
  private static final Settings DEFAULTS = Settings.defaults();

  @Test
  void givenSpotsStayAsTheyAre() {
    Spot given = spot("A", "yard", 10, 9, 4, 0.6);
    Site site = aSite().spots(given).build();
    assertThat(SpotLayout.candidates(site, bundles(4), DEFAULTS)).containsExactly(given);
  }

  @Test
  void anEasyYardTakesManyStacks() {
    Site site = aSite().yards(new Yard("yard", Outline.box(5, 6, 30, 12), 70)).build();
    List<Spot> spots = inZone("yard", SpotLayout.candidates(site, bundles(4, 4, 4), DEFAULTS));
    // Five in a row of 25 m; six metres across take four rows that share strips.
    assertThat(pickGreedily(spots, DEFAULTS)).hasSizeGreaterThanOrEqualTo(16);
  }

  @Test
  void aTightYardOfTwoSharedStripsIsFilled() {
    // 8.7 by 2.3 m: two stacks end to end on either side of one strip.
    double across = 2 * 0.6 + 0.91 + 0.02;
    Site site =
        aSite().yards(new Yard("yard", Outline.box(5, 8, 5 + 8.33, 8 + across), 70)).build();
    List<Spot> spots = inZone("yard", SpotLayout.candidates(site, bundles(4), DEFAULTS));
    assertThat(pickGreedily(spots, DEFAULTS)).hasSizeGreaterThanOrEqualTo(4);
  }

  @Test
  void noRoomNoSpots() {
    Site site = aSite().yards(new Yard("yard", Outline.box(5, 8, 8, 9), 70)).build();
    assertThat(SpotLayout.candidates(site, bundles(5), DEFAULTS)).isEmpty();
  }

  @Test
  void nothingDeliveredNoSpots() {
    assertThat(SpotLayout.candidates(aSite().build(), bundles(), DEFAULTS)).isEmpty();
  }

  @Test
  void aDeckWithRoomHoldsStacksWithinItsSetback() {
    Settings closer = DEFAULTS.with(Setting.DECK_EDGE_SETBACK, 1.3, "guard along the edge");
    List<Spot> spots = inZone("deck", SpotLayout.candidates(aSite().build(), bundles(4), closer));
    assertThat(spots).isNotEmpty().allMatch(s -> s.footprint().centre().x() >= 9.9 + 1.3);
  }

  /** South edge at y = 15.9; without walls nothing stands within 3.048 m of it. */
  @Test
  void wallsThatStandLetStacksComeNearer() {
    Site bare = aSite().build();
    Site walled = aSite().builtWalls(2.4).build();
    assertThat(inZone("deck", SpotLayout.candidates(bare, bundles(3), DEFAULTS)))
        .noneMatch(s -> s.footprint().centre().y() < 15.9 + 3.048);
    List<Spot> spots = inZone("deck", SpotLayout.candidates(walled, bundles(3), DEFAULTS));
    assertThat(spots)
        .doesNotHaveDuplicates()
        .anyMatch(s -> s.footprint().centre().y() < 15.9 + 2.5)
        .anyMatch(s -> s.footprint().centre().y() > 24.1 - 2.5);
  }

  @Test
  void racksOnlyForShortPieces() {
    Site site = aSite().build();
    Bundle longOnes = aBundle("B1").size(4, 0.6, 0.4).piece("W1", 1, 1, 4).build();
    Bundle shortOnes = aBundle("B2").size(1.2, 0.6, 0.4).piece("W1", 2, 1, 1.2).build();
    assertThat(racks(SpotLayout.candidates(site, delivery(longOnes), DEFAULTS))).isEmpty();
    assertThat(racks(SpotLayout.candidates(site, delivery(longOnes, shortOnes), DEFAULTS)))
        .isNotEmpty()
        .allMatch(s -> s.zoneId().equals("deck"));
  }

  @Test
  void nothingBeyondTheMachinesReach() {
    Point stand = new Point(8, 5);
    Machine small =
        new Machine("small", List.of(new MachineStand("M", stand)), List.of(new ChartRow(6, 2000)));
    List<Spot> spots = SpotLayout.candidates(aSite().machine(small).build(), bundles(4), DEFAULTS);
    assertThat(spots).isNotEmpty().allMatch(s -> s.footprint().centre().distanceTo(stand) <= 6);
  }

  @Test
  void spotsOutOfReachWhereTheMachineReachesNothing() {
    Machine far =
        new Machine(
            "far", List.of(new MachineStand("M", new Point(0, 0))), List.of(new ChartRow(2, 2000)));
    assertThat(SpotLayout.candidates(aSite().machine(far).build(), bundles(4), DEFAULTS))
        .isNotEmpty();
  }

  @Test
  void aTurnedYardGetsSpotsAlongItsEdges() {
    Outline turned =
        new Outline(
            List.of(
                new Point(8, 5), new Point(24, 8), new Point(23, 13.333), new Point(7, 10.333)));
    List<Spot> spots =
        SpotLayout.candidates(
            aSite().yards(new Yard("yard", turned, 70)).build(), bundles(4), DEFAULTS);
    double along = Math.toDegrees(Math.atan2(3, 16));
    List<Spot> alongEdge =
        spots.stream().filter(s -> Math.abs(s.footprint().headingDeg() - along) < 0.01).toList();
    // 16.3 by 5.4 m, two rows of three and more.
    assertThat(pickGreedily(alongEdge, DEFAULTS)).hasSizeGreaterThanOrEqualTo(6);
  }

  @Test
  void anEllShapedYardIsUsedInBothArms() {
    Outline ell =
        new Outline(
            List.of(
                new Point(2, 4),
                new Point(30, 4),
                new Point(30, 7),
                new Point(5, 7),
                new Point(5, 20),
                new Point(2, 20)));
    List<Spot> spots =
        SpotLayout.candidates(
            aSite().yards(new Yard("yard", ell, 70)).build(), bundles(4), DEFAULTS);
    List<Spot> picked = pickGreedily(spots, DEFAULTS);
    assertThat(picked).anyMatch(s -> s.footprint().centre().y() > 12);
    assertThat(picked).anyMatch(s -> s.footprint().centre().x() > 20);
  }

  @Test
  void theNumberOfCandidatesGrowsWithTheBundlesUpToALimit() {
    Site site = aSite().yards(new Yard("yard", Outline.box(1, 4, 39, 14), 70)).build();
    double[] thirty = IntStream.range(0, 30).mapToDouble(i -> 2 + 0.1 * i).toArray();
    double[] many = IntStream.range(0, 400).mapToDouble(i -> 2 + 0.01 * i).toArray();
    assertThat(SpotLayout.candidates(site, bundles(thirty), DEFAULTS)).hasSizeBetween(500, 600);
    assertThat(SpotLayout.candidates(site, bundles(many), DEFAULTS)).hasSizeBetween(1500, 4000);
  }

  @Test
  void theSameInputGivesTheSameSpotsWithIdsInOrder() {
    Site site = aSite().build();
    List<Spot> spots = SpotLayout.candidates(site, bundles(4, 3, 2), DEFAULTS);
    assertThat(SpotLayout.candidates(site, bundles(4, 3, 2), DEFAULTS)).isEqualTo(spots);
    assertThat(inZone("yard", spots))
        .extracting(Spot::id)
        .startsWith("yard-1", "yard-2", "yard-3")
        .doesNotHaveDuplicates();
  }

  /** First come, first served, as the crew would without looking ahead. */
  private static List<Spot> pickGreedily(List<Spot> spots, Settings settings) {
    Exclusion exclusion = Exclusion.of(spots, aSite().build(), settings);
    BitSet ruledOut = new BitSet();
    List<Spot> picked = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      if (!ruledOut.get(i)) {
        picked.add(spots.get(i));
        IntStream.of(exclusion.of(i)).forEach(ruledOut::set);
      }
    }
    return picked;
  }

  private static List<Spot> inZone(String zone, List<Spot> spots) {
    return spots.stream().filter(s -> s.zoneId().equals(zone)).toList();
  }

  private static List<Spot> racks(List<Spot> spots) {
    return spots.stream().filter(s -> s.kind() == SpotKind.RACK).toList();
  }

  private static Delivery bundles(double... lengthsM) {
    return delivery(
        IntStream.range(0, lengthsM.length)
            .mapToObj(i -> aBundle("B" + i).size(lengthsM[i], 0.6, 0.4).build())
            .toArray(Bundle[]::new));
  }

  private static Delivery delivery(Bundle... bundles) {
    return new Delivery(List.of(), List.of(bundles));
  }
}
