package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.ChartRow;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Yard;
import skidway.testkit.SiteBuilder;
import skidway.timber.Bundle;

/** What a remedy asks for is done, and the bundle has a spot. */
class RemedyTest {
  private static final Bundle B1 = aBundle("B1").weighing(1500).piece("W1", 1, 1, 3).build();

  private static Plan stage(Task task) {
    return Stager.stage(
        task,
        new SearchLimits(1, 500),
        used -> List.of(),
        (placed, delivered, personS) -> {},
        new StopButton());
  }

  private static void left(SiteBuilder site, Rule rule, String remedy, Bundle... bundles) {
    Plan plan = stage(task(site.build(), bundles));
    assertThat(plan.unplaced())
        .first()
        .satisfies(
            unplaced -> {
              assertThat(unplaced.rule()).isEqualTo(rule);
              assertThat(unplaced.sentence()).contains(remedy);
            });
  }

  private static void allPlaced(SiteBuilder site, Bundle... bundles) {
    assertThat(stage(task(site.build(), bundles)).unplaced()).isEmpty();
  }

  private static Machine standingAt(double x) {
    return new Machine(
        "machine",
        List.of(new MachineStand("M", new Point(x, 5))),
        List.of(new ChartRow(4, 2000), new ChartRow(40, 1000)));
  }

  @Test
  void aStandWithinTheReachNamedDoes() {
    Yard far = new Yard("yard", Outline.box(22, 6, 34, 12), 70);
    left(
        aSite().yards(far).machine(standingAt(14)),
        Rule.MACHINE_CAPACITY,
        "A machine stand within 4.00 m of a spot for it would do",
        B1);
    allPlaced(aSite().yards(far).machine(standingAt(28)), B1);
  }

  @Test
  void aMachineThatLiftsItNowhereIsCalledTooWeak() {
    Bundle heavy = aBundle("B1").weighing(2500).piece("W1", 1, 1, 3).build();
    left(
        aSite().machine(standingAt(14)),
        Rule.MACHINE_CAPACITY,
        "By its chart the machine lifts 2\u00a0500 kg at no reach",
        heavy);
  }

  @Test
  void groundAllowedAsMuchAsIsNamedDoes() {
    left(
        aSite().yards(new Yard("yard", Outline.box(5, 6, 30, 12), 10)),
        Rule.GROUND_PRESSURE,
        "Ground allowed 23.7 kPa would bear it",
        B1);
    allPlaced(aSite().yards(new Yard("yard", Outline.box(5, 6, 30, 12), 23.8)), B1);
  }

  @Test
  void asMuchYardMoreAsIsNamedDoes() {
    Yard small = new Yard("yard", Outline.box(22, 7.3, 24, 8), 70);
    left(
        aSite().yards(small),
        Rule.ZONE_LOAD,
        "Another 4.60 m by 2.11 m of yard, within the machine's reach, would take it.",
        B1);
    Yard more = new Yard("more", Outline.box(10, 8, 14.6, 10.11), 70);
    allPlaced(aSite().yards(small, more), B1);
  }

  /** The deck has no room within its setback, and the whole yard is too steep. */
  @Test
  void groundTooSteepIsNamedAndNotThatThereIsNoRoom() {
    left(
        aSite().yards(sloping(0.08)),
        Rule.YARD_SLOPE,
        "Ground levelled to a slope of 0.05 or less would do",
        LONG);
    allPlaced(aSite().yards(sloping(0.05)), LONG);
  }

  private static final Bundle LONG =
      aBundle("B1").size(5, 0.6, 0.4).weighing(900).piece("W1", 1, 1, 3).build();

  private static Yard sloping(double slope) {
    return new Yard(
        "yard",
        Outline.box(5, 6, 30, 12),
        70,
        "",
        OptionalDouble.of(slope),
        OptionalDouble.empty());
  }

  @Test
  void whereRoomIsShortWithinReachItAsksForRoomThere() {
    Yard narrow = new Yard("yard", Outline.box(18, 8, 22.7, 8.9), 70);
    Bundle first = tall("B1", 1);
    Bundle other = tall("B2", 2);
    Machine near =
        new Machine(
            "machine",
            List.of(new MachineStand("M", new Point(20, 5))),
            List.of(new ChartRow(10, 2000)));
    Plan plan = stage(task(aSite().yards(narrow).machine(near).build(), first, other));
    assertThat(plan.unplaced()).hasSize(1);
    assertThat(plan.unplaced().get(0).sentence())
        .contains("Another 4.60 m by 2.11 m of yard")
        .doesNotContain("the nearest such spot is");
  }

  private static Bundle tall(String id, int off) {
    return aBundle(id)
        .load("L1", off)
        .size(4, 0.6, 1.5)
        .weighing(1500)
        .piece("W1", off, 1, 3)
        .build();
  }
}
