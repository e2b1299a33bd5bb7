package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.Tasks.task;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.ToIntFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.optaplanner.core.config.solver.EnvironmentMode;
import skidway.audit.Audit;
import skidway.audit.Finding;
import skidway.audit.walk.PathFlood;
import skidway.job.PlanFiles;
import skidway.plan.Heeded;
import skidway.plan.Plan;
import skidway.plan.Presence;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Yard;
import skidway.testkit.RandomDelivery;
import skidway.testkit.SiteBuilder;
import skidway.timber.Bundle;

/** Plans over time, and plans that begin with what lies there, must please the audit too. */
class TimeThenAuditTest {
  private static final long SEEDS = Long.getLong("skidway.seeds", 6);

  @TempDir private Path folder = Path.of("");

  static LongStream seeds() {
    long from = Long.getLong("skidway.seed", 1);
    return LongStream.range(from, from + SEEDS);
  }

  /** One seed is searched with every score counted afresh. */
  private Plan stage(Task task, ToIntFunction<LocalDateTime> pulledBy, long seed, int effort) {
    Plan plan =
        Stager.stage(
            Survey.of(task, Presence.of(task, pulledBy)),
            new SearchLimits(seed, effort),
            new PathFlood(task)::shutBy,
            (placed, delivered, personS) -> {},
            new StopButton(),
            seed == 1 ? EnvironmentMode.FULL_ASSERT : EnvironmentMode.REPRODUCIBLE);
    Plan labelled = plan.labelled(PlanFiles.nextRevision(folder), "inputs", "", Heeded.NONE);
    return PlanFiles.read(PlanFiles.write(folder, labelled), task);
  }

  private static List<Finding> broken(Task task, Plan plan, ToIntFunction<LocalDateTime> pulledBy) {
    return Audit.of(task, plan, pulledBy).findings().stream()
        .filter(finding -> finding.rule() != Rule.PLACED)
        .toList();
  }

  /** Little room, so that spots are used again. */
  private static Site tightSite(Random random) {
    Joists joists =
        new Joists(
            random.nextInt(4) * 45,
            0.4,
            new Point(10, 16),
            List.of(new Point(9.9, 15.9), new Point(15, 20), new Point(20.1, 24.1)),
            new JoistDesign.LiveLoad(0.3 + 0.6 * random.nextDouble()));
    SiteBuilder site =
        aSite()
            .deckAllowed(1 + random.nextDouble())
            .yards(
                new Yard(
                    "yard",
                    Outline.box(5, 6, 9 + random.nextInt(14), 9 + random.nextInt(4)),
                    4 + 20 * random.nextDouble(),
                    "clay",
                    OptionalDouble.of(0.03 * random.nextDouble()),
                    OptionalDouble.of(600 + random.nextInt(1500))));
    return random.nextBoolean() ? site.joists(joists).build() : site.build();
  }

  private static Bundle[] inLoads(Bundle[] bundles, int loads) {
    Bundle[] spread = new Bundle[bundles.length];
    for (int b = 0; b < bundles.length; b++) {
      Bundle bundle = bundles[b];
      spread[b] =
          new Bundle(
              bundle.id(),
              "L" + (1 + b * loads / bundles.length),
              bundle.offOrder(),
              bundle.lengthM(),
              bundle.widthM(),
              bundle.heightM(),
              bundle.weighedKg(),
              bundle.packed());
    }
    return spread;
  }

  /** Loads come a day apart; every day some more pieces are pulled. */
  private static ToIntFunction<LocalDateTime> pulls(Task task, Random random) {
    int[] pulled = new int[task.delivery().loads().size()];
    for (int i = 0; i < pulled.length; i++) {
      pulled[i] = random.nextInt(1 + task.delivery().pieces().size());
    }
    Arrays.sort(pulled);
    LocalDateTime first = task.delivery().loads().get(0).arrival();
    return arrival -> pulled[arrival.getDayOfYear() - first.getDayOfYear()];
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whateverIsPulledBetweenLoadsThePlanIsClean(long seed) {
    Random random = new Random(seed);
    Bundle[] bundles =
        inLoads(RandomDelivery.bundles(random, 6 + random.nextInt(14)), 2 + random.nextInt(4));
    Task task = task(tightSite(random), Settings.defaults(), bundles);
    ToIntFunction<LocalDateTime> pulledBy = pulls(task, random);
    Plan plan = stage(task, pulledBy, seed, 500);
    assertThat(plan.stacks()).isNotEmpty();
    assertThat(broken(task, plan, pulledBy)).isEmpty();
  }

  /** Lifting costs little here, so that much of what lies there is moved. */
  @ParameterizedTest
  @MethodSource("seeds")
  void whateverLiesThereThePlanIsClean(long seed) {
    Random random = new Random(seed);
    Site site = tightSite(random);
    Bundle[] bundles =
        inLoads(RandomDelivery.bundles(random, 6 + random.nextInt(14)), 2 + random.nextInt(2));
    Task whole = task(site, Settings.defaults().with(Setting.REHANDLE_PIECE, 1, ""), bundles);
    Plan before = stage(whole, arrival -> 0, seed, 50);
    Settings settings =
        Settings.defaults()
            .with(Setting.MACHINE_LIFT, random.nextInt(60), "")
            .with(Setting.RETAG, random.nextInt(20), "")
            .with(Setting.REHANDLE_PIECE, 60 + random.nextInt(600), "");
    Task rest = HalfDone.of(whole, before, random.nextInt(12), random, settings);
    ToIntFunction<LocalDateTime> pulledBy =
        random.nextBoolean() ? pulls(rest, random) : arrival -> 0;
    Plan plan = stage(rest, pulledBy, seed, 500);
    assertThat(broken(rest, plan, pulledBy)).isEmpty();
  }
}
