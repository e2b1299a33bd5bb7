package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.site.Yard;
import skidway.testkit.SiteBuilder;
import skidway.timber.Delivery;

class LayoutPropertiesTest {
  private static final Settings SETTINGS =
      Settings.defaults()
          .with(Setting.DECK_EDGE_SETBACK, 1.8, "guard along the edge")
          .with(Setting.OPENING_SETBACK, 0.8, "railing");

  /** Candidates keep every rule without using up what counts as touching. */
  @Property(seed = "20310505", tries = 15)
  void everyCandidateKeepsEveryPlacementRule(@ForAll @IntRange(max = 1_000_000) int seed) {
    Random random = new Random(seed);
    Site site = randomSite(random);
    Delivery delivery =
        new Delivery(
            List.of(),
            List.of(
                aBundle("B1").size(1 + 3 * random.nextDouble(), 0.6, 0.4).build(),
                aBundle("B2").size(1.1, 0.7, 0.4).piece("W1", 1, 1, 1.1).build()));
    PlacementOracle oracle = new PlacementOracle(site, SETTINGS, 1e-6);
    assertThat(SpotLayout.candidates(site, delivery, SETTINGS)).allMatch(oracle::allows);
  }

  /** A random spot is legal exactly when the oracle says so, give or take two millimetres. */
  @Property(seed = "20310505", tries = 100)
  void legalSpotsAgreeWithTheOracle(@ForAll @IntRange(max = 1_000_000) int seed) {
    Random random = new Random(seed);
    Site site = randomSite(random);
    LegalSpots legal = LegalSpots.of(site, SETTINGS);
    PlacementOracle strict = new PlacementOracle(site, SETTINGS, 1e-6);
    PlacementOracle lenient = new PlacementOracle(site, SETTINGS, 0.004);
    for (int i = 0; i < 20; i++) {
      Spot spot = randomSpot(random);
      if (strict.allows(spot)) {
        assertThat(legal.breaches(spot)).isEmpty();
      }
      if (legal.isLegal(spot)) {
        assertThat(lenient.allows(spot)).as("%s", spot).isTrue();
      }
      assertThat(legal.isLegal(spot)).isEqualTo(legal.breaches(spot).isEmpty());
      if (spot.zoneId().equals("deck")) {
        assertThat(legal.heightCapM(spot)).isBetween(strict.capM(spot), lenient.capM(spot));
      }
    }
  }

  private static Site randomSite(Random random) {
    double turn = random.nextBoolean() ? 0 : 30 * random.nextDouble();
    Footprint yard = new Footprint(new Point(14, 9), turn, 12 + 6 * random.nextDouble(), 6);
    double slope = random.nextInt(4) == 0 ? 0.06 : 0.04;
    SiteBuilder site = aSite().yards(sloping(yard.outline(), slope));
    if (random.nextBoolean()) {
      site.walls(someWalls(random));
    }
    if (random.nextInt(3) == 0) {
      double depthM = random.nextBoolean() ? Double.NaN : 1.5 * random.nextDouble();
      site.excavation("pit", at(random, 2, 1.5).outline(), random.nextDouble(), depthM);
    }
    if (random.nextInt(4) == 0) {
      OptionalDouble owners =
          random.nextBoolean()
              ? OptionalDouble.empty()
              : OptionalDouble.of(4 * random.nextDouble());
      double volts = 100_000 * random.nextDouble();
      site.overheadLine(new OverheadLine("line", point(random), point(random), volts, owners));
    }
    if (random.nextBoolean()) {
      Footprint tree = at(random, 2, 1.5);
      site.keepClear("tree", tree.outline(), random.nextDouble(), random.nextBoolean());
    }
    if (random.nextBoolean()) {
      site.lane("lane", 1.2, point(random), point(random), point(random));
    }
    if (random.nextBoolean()) {
      double x = 12 + 5 * random.nextDouble();
      site.floorOpening("stair", Outline.box(x, 19, x + 1, 21));
    }
    return site.build();
  }

  private static Yard sloping(Outline outline, double slope) {
    return new Yard("yard", outline, 70, "", OptionalDouble.of(slope), OptionalDouble.empty());
  }

  /** Walls of random length and height along the deck's edges, some a little turned. */
  private static Wall[] someWalls(Random random) {
    return IntStream.range(0, 6)
        .mapToObj(
            i -> {
              Point along =
                  Point.unit(90 * i + (random.nextBoolean() ? 0 : 12 * random.nextDouble() - 6));
              Point middle =
                  new Point(15, 20)
                      .minus(
                          along
                              .turnedLeft()
                              .times((i % 2 == 0 ? 4 : 5) + random.nextDouble() - 0.4))
                      .plus(along.times(2 * random.nextDouble()));
              Point half = along.times(1 + 4 * random.nextDouble());
              double builtM = random.nextBoolean() ? 0 : 2 * random.nextDouble();
              return new Wall(
                  "W" + i,
                  middle.minus(half),
                  middle.plus(half),
                  0.2,
                  Starter.FULL,
                  List.of(),
                  builtM);
            })
        .toArray(Wall[]::new);
  }

  private static Spot randomSpot(Random random) {
    boolean deck = random.nextInt(3) == 0;
    Point centre =
        deck
            ? new Point(10 + 10 * random.nextDouble(), 16 + 8 * random.nextDouble())
            : point(random);
    double heading = random.nextBoolean() ? 0 : 180 * random.nextDouble();
    return new Spot(
        "S",
        deck ? "deck" : "yard",
        SpotKind.STACK,
        new Footprint(centre, heading, 0.5 + 2 * random.nextDouble(), 0.6),
        random.nextBoolean() ? OpenSide.LEFT : OpenSide.RIGHT,
        0.91,
        OptionalDouble.empty());
  }

  private static Footprint at(Random random, double lengthM, double widthM) {
    return new Footprint(point(random), 180 * random.nextDouble(), lengthM, widthM);
  }

  private static Point point(Random random) {
    return new Point(5 + 18 * random.nextDouble(), 5 + 9 * random.nextDouble());
  }
}
