package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import skidway.geometry.Rectangle;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;

class ExclusionTest {
  private static final Site SITE = aSite().build();
  private static final Settings DEFAULTS = Settings.defaults();

  private static final Settings WIDE_BEARERS =
      DEFAULTS.with(Setting.BEARER_REACH, 0.4, "joists measured");

  /** From (0, 0) to (4, 0.6), its strip of 0.91 m above. */
  private static final Spot BASE = spot("A", "yard", 2, 0.3, 4, 0.6);

  @Test
  void endToEndTheGapIsKept() {
    checkExcludes(spot("B", "yard", 2 + 4.3, 0.3, 4, 0.6), false);
    checkExcludes(spot("B", "yard", 2 + 4.29, 0.3, 4, 0.6), true);
  }

  @Test
  void noStackOnAStrip() {
    checkExcludes(spot("B", "yard", 2, 0.3 + 0.6 + 0.91, 4, 0.6), false);
    checkExcludes(spot("B", "yard", 2, 0.3 + 0.6 + 0.8, 4, 0.6), true);
    // Below, the gap is what counts for the base; but the other's strip must stay free too.
    checkExcludes(spot("B", "yard", 2, 0.3 - 0.6 - 0.5, 4, 0.6), true);
    checkExcludes(openDown(2, 0.3 - 0.6 - 0.3), false);
  }

  @Test
  void twoStacksShareOneStrip() {
    checkExcludes(openDown(2, 0.3 + 0.6 + 0.91), false);
  }

  @Test
  void cornersAreMeasuredStraight() {
    checkExcludes(spot("B", "yard", 2 + 4 + 0.22, 0.3 - 0.6 - 0.22, 4, 0.6), false);
    checkExcludes(spot("B", "yard", 2 + 4 + 0.2, 0.3 - 0.6 - 0.2, 4, 0.6), true);
  }

  @Test
  void aSpotDoesNotExcludeItself() {
    assertThat(Exclusion.of(List.of(BASE), SITE, DEFAULTS).of(0)).isEmpty();
  }

  /** Back to back on a deck, 0.3 m between: bearers that reach more than 0.15 m overlap. */
  @Test
  void noPartOfADeckIsCountedUnderTwoStacks() {
    Spot north = spot("A", "deck", 15, 20, 4, 0.6);
    Spot south = openDown("deck", 15, 20 - 0.9);
    checkBearing(List.of(north, south), 0.15, false);
    checkBearing(List.of(north, south), 0.16, true);
    checkBearing(List.of(BASE, openDown("yard", 2, 0.3 - 0.9)), 0.16, false);
    // The rails of a rack do not stand out: its 0.3 m are those of the stack alone.
    checkBearing(List.of(rack("R", "deck", 15, 20, 1.8, 0.6), south), 0.3, false);
    checkBearing(List.of(rack("R", "deck", 15, 20, 1.8, 0.6), south), 0.31, true);
  }

  private static void checkBearing(List<Spot> two, double reachM, boolean expected) {
    Settings settings = DEFAULTS.with(Setting.BEARER_REACH, reachM, "joists measured");
    Exclusion exclusion = Exclusion.of(two, SITE, settings);
    assertThat(exclusion.of(0)).containsExactly(expected ? new int[] {1} : new int[0]);
    assertThat(exclusion.of(1)).containsExactly(expected ? new int[] {0} : new int[0]);
    if (expected) {
      assertThat(exclusion.rule(0, 1)).isEqualTo(Rule.BEARING_APART);
    }
  }

  @Property(seed = "20310505", tries = 60)
  void findsAllPairsThatPairwiseChecksFind(@ForAll("spots") List<Spot> spots) {
    Exclusion exclusion = Exclusion.of(spots, SITE, WIDE_BEARERS);
    for (int i = 0; i < spots.size(); i++) {
      Spot spot = spots.get(i);
      int self = i;
      int[] expected =
          IntStream.range(0, spots.size())
              .filter(j -> j != self && !apart(spot, spots.get(j)))
              .toArray();
      assertThat(exclusion.of(i)).containsExactly(expected);
    }
  }

  /** Two spots alone, without the search for those near each other. */
  private static boolean apart(Spot a, Spot b) {
    Rectangle stackA = Rectangle.of(a.footprint());
    Rectangle stackB = Rectangle.of(b.footprint());
    return !stackA.meets(Rectangle.of(b.strip()))
        && !stackB.meets(Rectangle.of(a.strip()))
        && !stackA.meets(stackB)
        && stackA.gapM(stackB) >= DEFAULTS.get(Setting.STACK_GAP) - Rectangle.TOUCH_M
        && (!a.zoneId().equals("deck")
            || !b.zoneId().equals("deck")
            || !wide(a.footprint()).meets(wide(b.footprint())));
  }

  private static Rectangle wide(Footprint footprint) {
    return Rectangle.of(footprint.resized(footprint.lengthM(), footprint.widthM() + 0.8));
  }

  @Provide
  Arbitrary<List<Spot>> spots() {
    Arbitrary<Double> at = Arbitraries.doubles().between(0, 20);
    Arbitrary<Double> size = Arbitraries.doubles().between(0.5, 5);
    Arbitrary<Footprint> footprint =
        Combinators.combine(at, at, Arbitraries.doubles().between(0, 180), size, size)
            .as((x, y, turn, length, width) -> new Footprint(new Point(x, y), turn, length, width));
    return Combinators.combine(Arbitraries.of("yard", "deck"), footprint)
        .as(
            (zone, f) ->
                new Spot("S", zone, SpotKind.STACK, f, OpenSide.LEFT, 0.91, OptionalDouble.empty()))
        .list()
        .ofMaxSize(25);
  }

  private static Spot openDown(double x, double y) {
    return openDown("yard", x, y);
  }

  private static Spot openDown(String zone, double x, double y) {
    return new Spot(
        "B",
        zone,
        SpotKind.STACK,
        new Footprint(new Point(x, y), 0, 4, 0.6),
        OpenSide.RIGHT,
        0.91,
        OptionalDouble.empty());
  }

  private static void checkExcludes(Spot other, boolean expected) {
    Exclusion exclusion = Exclusion.of(List.of(BASE, other), SITE, DEFAULTS);
    assertThat(exclusion.of(0)).containsExactly(expected ? new int[] {1} : new int[0]);
    assertThat(exclusion.of(1)).containsExactly(expected ? new int[] {0} : new int[0]);
  }
}
