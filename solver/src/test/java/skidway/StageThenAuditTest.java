package skidway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.audit.Audit;
import skidway.audit.Finding;
import skidway.audit.walk.PathFlood;
import skidway.job.PlanFiles;
import skidway.plan.Heeded;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.ChartRow;
import skidway.site.Grip;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Yard;
import skidway.staging.SearchLimits;
import skidway.staging.Stager;
import skidway.staging.StopButton;
import skidway.testkit.BundleBuilder;
import skidway.testkit.RandomDelivery;
import skidway.testkit.SiteBuilder;

/** Every plan that is made, written and read back must please the audit. */
class StageThenAuditTest {
  @TempDir private Path folder = Path.of("");

  private Plan throughTheFile(Task task, long seed) {
    Plan plan =
        Stager.stage(
            task,
            new SearchLimits(seed, 2000),
            new PathFlood(task)::shutBy,
            (placed, delivered, personS) -> {},
            new StopButton());
    Plan labelled = plan.labelled(PlanFiles.nextRevision(folder), "inputs", "", Heeded.NONE);
    return PlanFiles.read(PlanFiles.write(folder, labelled), task);
  }

  private static List<Finding> broken(Task task, Plan plan) {
    return Audit.of(task, plan).findings().stream()
        .filter(finding -> finding.rule() != Rule.PLACED)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void whateverIsDeliveredThePlanIsClean(long seed) {
    Random random = new Random(seed);
    Settings settings =
        Settings.defaults()
            .with(Setting.DECK_EDGE_SETBACK, 1 + random.nextDouble(), "test")
            .with(Setting.STACK_HEIGHT, 1 + random.nextDouble(), "")
            .with(Setting.WALK_WIDTH, 0.6 + random.nextDouble() / 2, "test")
            .with(Setting.REHANDLE_PIECE, 30 + random.nextInt(300), "");
    SiteBuilder site =
        aSite()
            .keepClear("tree", Outline.box(12, 8, 12.5, 8.5), random.nextDouble(), false)
            .floorOpening("stair", Outline.box(10.5, 18, 11.5, 21))
            .yards(
                new Yard("A1", Outline.box(5, 6, 18, 12), 70),
                new Yard("A11", Outline.box(18, 6, 30, 12), 70));
    Task task =
        task(site.build(), settings, RandomDelivery.bundles(random, 4 + random.nextInt(20)));
    assertThat(broken(task, throughTheFile(task, seed))).isEmpty();
  }

  /** Joists, slopes, soft ground, trenches, lines, slings, lanes and walls that stand already. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void whateverTheSiteCanBearThePlanIsClean(long seed) {
    Random random = new Random(seed);
    Settings settings =
        Settings.defaults()
            .with(Setting.DECK_EDGE_SETBACK, 1 + random.nextDouble(), "test")
            .with(Setting.BEARER_REACH, 0.3 * random.nextDouble(), "test")
            .with(Setting.PICK_TIME, 200 * random.nextDouble(), "");
    Joists joists =
        new Joists(
            random.nextInt(4) * 45,
            0.3 + 0.3 * random.nextDouble(),
            new Point(10, 16),
            List.of(new Point(9.9, 15.9), new Point(15, 20), new Point(20.1, 24.1)),
            new JoistDesign.LiveLoad(0.2 + 0.6 * random.nextDouble()));
    Yard yard =
        new Yard(
            "yard",
            Outline.box(5, 6, 30, 12),
            3 + 10 * random.nextDouble(),
            "clay",
            OptionalDouble.of(0.05 * random.nextDouble()),
            OptionalDouble.of(500 + random.nextInt(2000)));
    Grip grip =
        random.nextBoolean()
            ? new Grip.Forks(OptionalDouble.of(0.2 + 0.2 * random.nextDouble()))
            : new Grip.Slings(
                OptionalDouble.of(30 + random.nextInt(60)),
                OptionalDouble.of(50 + random.nextInt(100)));
    Machine machine =
        new Machine(
            "machine",
            List.of(
                new MachineStand("M", new Point(20, 5)),
                new MachineStand("N", new Point(12, 5), "lane")),
            List.of(new ChartRow(10, 400), new ChartRow(20, 200), new ChartRow(30, 100)),
            grip,
            OptionalDouble.of(2),
            40,
            "");
    SiteBuilder site =
        aSite()
            .builtWalls(random.nextBoolean() ? random.nextDouble() : 0)
            .deckAllowed(1 + random.nextDouble())
            .deckTotal(100 + random.nextInt(500))
            .joists(joists)
            .yards(yard)
            .lane("lane", 3 + 2 * random.nextDouble(), new Point(12, 2), new Point(12, 7))
            .machine(machine)
            .excavation("trench", Outline.box(3, 6, 4, 12), 0, 2 * random.nextDouble())
            .overheadLine(
                new OverheadLine(
                    "wire",
                    new Point(33 + 3 * random.nextDouble(), 0),
                    new Point(33, 28),
                    7200,
                    OptionalDouble.empty()));
    Task task =
        task(site.build(), settings, RandomDelivery.bundles(random, 4 + random.nextInt(20)));
    Plan plan = throughTheFile(task, seed);
    assertThat(plan.stacks()).isNotEmpty();
    assertThat(broken(task, plan)).isEmpty();
  }

  /** The far spot costs more carrying than lifting a bundle twice, so it only serves to wait on. */
  @Test
  void setDownsArePlannedWrittenReadAndAudited() {
    SiteBuilder site =
        aSite()
            .spots(spot("near", "yard", 11, 8, 4.5, 0.9), spot("far", "yard", 27.5, 8, 4.5, 0.9));
    BundleBuilder early = aBundle("early").load("L1", 1).size(2, 0.6, 0.4);
    BundleBuilder late = aBundle("late").load("L1", 2).size(4, 0.6, 0.4);
    for (int course = 1; course <= 15; course++) {
      early.piece("W1", course, 1, 2);
      late.piece("W1", course + 15, 1, 2);
    }
    Task task = task(site.build(), early.build(), late.build());
    Plan plan = throughTheFile(task, 1);
    assertThat(plan.steps())
        .extracting(Step::kind, Step::bundleId, Step::toId)
        .containsExactly(
            tuple(StepKind.SET_DOWN, "early", "far"),
            tuple(StepKind.PLACE, "late", "near"),
            tuple(StepKind.LIFT_ON, "early", "near"));
    assertThat(plan.effort().setDownS()).isPositive();
    assertThat(broken(task, plan)).isEmpty();
  }
}
