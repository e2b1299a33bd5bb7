package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.SiteBuilder.wall;
import static skidway.testkit.Tasks.task;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import skidway.plan.Effort;
import skidway.plan.Plan;
import skidway.plan.Reason;
import skidway.plan.Search;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.site.Footprint;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.OpenSide;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Starter;
import skidway.site.Wall;
import skidway.site.Yard;
import skidway.timber.BearerRow;

final class NeverThrowsTest {
  private final Task task =
      task(
          aSite()
              .spots(spot("Y1", "yard", 10, 8, 4.5, 0.9))
              .lane("L", 1, new Point(1, 5), new Point(30, 5))
              .machine(Machines.onLane("L", Machines.slings(45, 300)))
              .overheadLine(
                  new OverheadLine(
                      "P1", new Point(25, 0), new Point(25, 28), 12_000, OptionalDouble.empty()))
              .walls(
                  wall("W1", 10, 16, 20, 16, Starter.FULL),
                  new Wall(
                      "W2", new Point(20, 16), new Point(20, 24), 0.2, Starter.HALF, List.of(), 1),
                  wall("W4", 10, 24, 10, 16, Starter.HALF))
              .excavation("trench", Outline.box(12, 8, 14, 9), 0, 1)
              .overheadLine(
                  new OverheadLine(
                      "L", new Point(6, 0), new Point(6, 28), 7200, OptionalDouble.empty()))
              .yards(
                  new Yard(
                      "yard",
                      Outline.box(5, 6, 30, 12),
                      70,
                      "",
                      OptionalDouble.of(0.02),
                      OptionalDouble.of(90)))
              .deckTotal(90)
              .joists(
                  new Joists(
                      30,
                      0.4064,
                      new Point(10, 16),
                      List.of(new Point(12, 16), new Point(15, 20), new Point(19, 24)),
                      new JoistDesign.LiveLoad(1.9)))
              .build(),
          aBundle("B1").load("L1", 1).piece("W1", 1, 1, 4).build(),
          aBundle("B2").load("L1", 2).piece("W2", 1, 1, 3).piece("W9", 1, 1, 3).build(),
          aBundle("B3").load("L2", 1).piece("W4", 1, 1, 1).build());

  @Property(seed = "20310505", tries = 60)
  void anyPlanGetsAReportWithWholeSentences(@ForAll("plans") Plan plan) {
    AuditReport report = Audit.of(task, plan);
    assertThat(report.findings())
        .allSatisfy(f -> assertThat(f.sentence()).isNotBlank().endsWith("."));
    assertThat(report.margins()).allSatisfy(m -> assertThat(m.value()).isFinite());
    assertThat(report.stackMargins()).allSatisfy(m -> assertThat(m.value()).isFinite());
    assertThat(report.findings()).isSortedAccordingTo((a, b) -> a.rule().compareTo(b.rule()));
    assertThat(Audit.of(task, plan)).isEqualTo(report);
  }

  @Provide
  Arbitrary<Plan> plans() {
    return Combinators.combine(
            stacks().list().ofMaxSize(5),
            spots().list().ofMaxSize(2),
            steps().list().ofMaxSize(6),
            bundleIds().list().ofMaxSize(3),
            numbers())
        .as(
            (stacks, waiting, steps, unplaced, seconds) ->
                new Plan(
                    "some job",
                    1,
                    "",
                    "",
                    new Search(0, 0, false),
                    stacks,
                    waiting,
                    steps,
                    unplaced.stream().map(NeverThrowsTest::reason).toList(),
                    unplaced.stream().map(b -> new Unplaced(b, Rule.PLACED, "")).toList(),
                    new Effort(seconds, 0, -seconds, 0, seconds),
                    List.of(),
                    List.of()));
  }

  private static Reason reason(String bundleId) {
    return new Reason(bundleId, "Y1", 0, "", OptionalDouble.empty(), List.of());
  }

  private Arbitrary<Stack> stacks() {
    return Combinators.combine(spots(), bundleIds().list().ofMaxSize(3)).as(Stack::new);
  }

  private Arbitrary<Spot> spots() {
    Arbitrary<Footprint> footprints =
        Combinators.combine(coordinates(), coordinates(), numbers(), sizes(), sizes())
            .as(
                (x, y, heading, length, width) ->
                    new Footprint(new Point(x, y), heading, length, width));
    return Combinators.combine(
            Arbitraries.of("Y1", "Y2", "%s", ""),
            Arbitraries.of("yard", "deck", "nowhere"),
            Arbitraries.of(SpotKind.class),
            footprints,
            Arbitraries.of(OpenSide.class),
            numbers(),
            numbers())
        .as(
            (id, zone, kind, footprint, side, strip, limit) ->
                new Spot(id, zone, kind, footprint, side, strip, OptionalDouble.of(limit)));
  }

  private Arbitrary<Step> steps() {
    return Combinators.combine(
            Arbitraries.integers().between(-1, 5),
            Arbitraries.of(StepKind.class),
            bundleIds(),
            Arbitraries.of("L1", "L2", "Y1", "Y2", ""),
            Arbitraries.of("Y1", "Y2", "T9"),
            Arbitraries.of("M", "N"),
            numbers())
        .as(
            (number, kind, bundle, from, to, stand, figure) ->
                new Step(
                    number,
                    kind,
                    bundle,
                    from,
                    to,
                    number,
                    stand,
                    figure,
                    figure,
                    figure,
                    new BearerRow(number, figure, figure, figure)));
  }

  private static Arbitrary<String> bundleIds() {
    return Arbitraries.of("B1", "B2", "B3", "B9", "");
  }

  private static Arbitrary<Double> coordinates() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(-5, 45), Arbitraries.of(1e300, -1e9, Double.MIN_VALUE));
  }

  private static Arbitrary<Double> sizes() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(0.1, 8),
        Arbitraries.of(1e-12, 1e300, Double.POSITIVE_INFINITY));
  }

  private static Arbitrary<Double> numbers() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(-1, 2000),
        Arbitraries.of(0.0, Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 1e300));
  }
}
