package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.testkit.BundleBuilder;
import skidway.timber.Bundle;

class WhyUnplacedTest {
  private static final Spot A = spot("A", "yard", 10, 8, 4.5, 1);

  private static BundleBuilder bundle(String id, int off, double length, double height) {
    return aBundle(id).load("L1", off).size(length, 0.6, height).piece("W1", off, 1, 1.5);
  }

  /** The first bundles lie on A, the last one has no spot. */
  private static Unplaced last(Settings settings, Spot[] spots, Bundle... bundles) {
    Board board = Boards.board(task(aSite().build(), settings, bundles), spots);
    Occupancy occupancy = Boards.ground(board).empty();
    for (int b = 0; b < bundles.length - 1; b++) {
      occupancy.put(b, 0);
    }
    assertThat(occupancy.legal()).isTrue();
    return new WhyUnplaced(occupancy).of(bundles.length - 1);
  }

  private static Rule binding(Bundle... bundles) {
    return last(Settings.defaults(), new Spot[] {A}, bundles).rule();
  }

  @Test
  void everyRuleOfAStackIsNamedWhenItBinds() {
    Bundle first = bundle("B1", 1, 4, 0.9).build();
    assertThat(binding(first, bundle("B2", 2, 4.6, 0.4).build())).isEqualTo(Rule.FITS_SPOT);
    assertThat(binding(first, bundle("B2", 2, 4, 0.9).build())).isEqualTo(Rule.STACK_HEIGHT);
    assertThat(binding(first, bundle("B2", 2, 4, 0.4).weighing(4000).build()))
        .isEqualTo(Rule.MACHINE_CAPACITY);
    Bundle narrow = aBundle("B2").load("L1", 2).size(2, 1, 0.4).piece("W1", 2, 1, 1.5).build();
    assertThat(binding(first, narrow)).isEqualTo(Rule.TIER_SUPPORT);
  }

  @Test
  void whatIsOpenBearsNothingNewAndThatIsSaid() {
    Bundle open = bundle("B1", 1, 4, 0.4).build();
    Bundle next = bundle("B2", 2, 4, 0.4).build();
    assertThat(onTopOf(open, next, Set.of("B1")))
        .contains("On 1 of them lies a bundle that is open or locked, which bears nothing new.");
    Bundle wide = aBundle("B2").load("L1", 2).size(2, 1, 0.4).piece("W1", 2, 1, 1.5).build();
    assertThat(onTopOf(open, wide, Set.of())).doesNotContain("bears nothing new");
  }

  private static String onTopOf(Bundle lying, Bundle next, Set<String> fixed) {
    Start start =
        new Start(
            List.of(new Stack(A, List.of(lying.id()))), Map.of(), List.of(A), fixed, Set.of());
    Board board = Boards.board(task(aSite().build(), lying, next).startingFrom(start), A);
    Occupancy occupancy = Boards.ground(board).empty();
    occupancy.put(0, 0);
    return new WhyUnplaced(occupancy).of(1).sentence();
  }

  @Test
  void tiersBindWhenThereAreTooMany() {
    Settings low = Settings.defaults().with(Setting.STACK_TIERS, 2, "");
    Bundle[] three = {
      bundle("B1", 1, 4, 0.1).build(),
      bundle("B2", 2, 4, 0.1).build(),
      bundle("B3", 3, 4, 0.1).build()
    };
    assertThat(last(low, new Spot[] {A}, three).rule()).isEqualTo(Rule.STACK_TIERS);
  }

  @Test
  void spotsOfAnotherSizeDoNotBind() {
    Spot[] spots = {
      A,
      spot("short1", "yard", 20, 8, 2, 1),
      spot("short2", "yard", 24, 8, 2, 1),
      rack("rack", "yard", 27, 8, 2, 1)
    };
    Unplaced why =
        last(
            Settings.defaults(),
            spots,
            bundle("B1", 1, 4, 0.9).build(),
            bundle("B2", 2, 4, 0.9).build());
    assertThat(why.rule()).isEqualTo(Rule.STACK_HEIGHT);
    assertThat(why.sentence())
        .isEqualTo(
            "B2 (4.00 m long, 0.90 m high, 18 kg): of 4 spots none is left"
                + " (fitsSpot at 2, stackHeight at 1, rackLength at 1). Another 4.60 m by 2.11 m of yard,"
                + " within the machine's reach, would take it.");
  }
}
