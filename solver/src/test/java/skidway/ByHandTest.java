package skidway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.audit.Audit;
import skidway.audit.AuditReport;
import skidway.audit.walk.PathFlood;
import skidway.job.PlanFiles;
import skidway.plan.Heeded;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Machine;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.staging.SearchLimits;
import skidway.staging.Stager;
import skidway.staging.StopButton;
import skidway.testkit.BundleBuilder;
import skidway.testkit.RandomDelivery;
import skidway.testkit.SiteBuilder;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;

/** A site without a machine gets a plan all the same, whose hours are those of people who walk. */
final class ByHandTest {
  private static final List<Spot> YARD =
      List.of(
          spot("Y1", "yard", 9, 8, 4.5, 0.9),
          spot("Y2", "yard", 15, 8, 4.5, 0.9),
          spot("Y3", "yard", 23, 8, 4.5, 0.9));

  @TempDir private Path folder = Path.of("");

  private static SiteBuilder handSite() {
    return aSite().machine(Machine.NONE);
  }

  private Plan staged(Task task) {
    Plan plan =
        Stager.stage(
            task,
            new SearchLimits(1, 500),
            new PathFlood(task)::shutBy,
            (placed, delivered, personS) -> {},
            new StopButton());
    return PlanFiles.read(
        PlanFiles.write(folder, plan.labelled(1, "inputs", "", Heeded.NONE)), task);
  }

  /** Three layers of timbers that one, two, three and four people carry. */
  private static Bundle mixed(String id, int offOrder, int course) {
    BundleBuilder bundle = aBundle(id).load("L1", offOrder).size(4, 0.6, 0.45);
    double[] lengths = {4, 2.8, 2.5, 1.2};
    for (int wall = 1; wall <= 4; wall++) {
      for (int turn = 0; turn < 2; turn++) {
        double length = lengths[(wall + turn + course) % 4];
        bundle.piece("W" + wall, course + turn, 1, length, 1 + (wall + turn) % 3);
      }
    }
    return bundle.build();
  }

  /** Those needed first come off first. */
  private static Task fiveBundles() {
    return task(
        handSite().spots(YARD.toArray(Spot[]::new)).build(),
        mixed("B1", 1, 1),
        mixed("B2", 2, 3),
        mixed("B3", 3, 5),
        mixed("B4", 4, 7),
        mixed("B5", 5, 9));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void whateverIsDeliveredThePlanIsClean(long seed) {
    Random random = new Random(seed);
    Task task =
        task(
            handSite()
                .keepClear("tree", Outline.box(12, 8, 12.5, 8.5), random.nextDouble(), false)
                .build(),
            RandomDelivery.bundles(random, 4 + random.nextInt(12)));
    Plan plan = staged(task);
    assertThat(plan.unplaced()).isEmpty();
    AuditReport report = Audit.of(task, plan);
    assertThat(report.findings()).isEmpty();
    assertThat(report.effort().offTruckS())
        .isCloseTo(plan.effort().offTruckS(), within(0.06 * plan.effort().offTruckS()));
    assertThat(report.remarks()).anyMatch(remark -> remark.startsWith("No machine unloads"));
  }

  /** With a machine it would pay to set down what is needed first, and to lift it on last. */
  @Test
  void nothingIsSetDownAndEveryStackRisesInOffOrder() {
    Task task = fiveBundles();
    Plan plan = staged(task);
    assertThat(plan.unplaced()).isEmpty();
    assertThat(plan.steps()).hasSize(5).allMatch(Step::byHand);
    assertThat(plan.steps()).extracting(Step::kind).containsOnly(StepKind.PLACE);
    assertThat(plan.stacks())
        .anyMatch(stack -> stack.bundleIds().size() > 1)
        .allSatisfy(stack -> assertThat(stack.bundleIds()).isSorted());
  }

  @Test
  void theHoursAreThoseOfSomebodyWhoWalksThemAll() {
    Task task = fiveBundles();
    Plan plan = staged(task);
    Walked walked = new Walked(plan);
    plan.steps().forEach(step -> walked.unload(step, task.delivery().bundle(step.bundleId())));
    assertThat(plan.effort().offTruckS()).isCloseTo(walked.unloadS, within(0.1));
    assertThat(plan.effort().pickS()).isCloseTo(walked.pickS, within(0.1));
    assertThat(plan.effort().machineS()).isZero();
    assertThat(plan.effort().setDownS()).isZero();
  }

  /** Without walls or trees in the way, people walk straight from the truck to the open side. */
  private static final class Walked {
    /** Half the truck's width beside its middle, (18, 2). */
    private static final List<Point> SIDES = List.of(new Point(18, 3.3), new Point(18, 0.7));

    private final Plan plan;
    private final Map<String, Double> topM = new HashMap<>();
    private double unloadS;
    private double pickS;

    Walked(Plan plan) {
      this.plan = plan;
    }

    void unload(Step step, Optional<Bundle> bundle) {
      Spot spot =
          plan.stacks().stream()
              .map(stack -> stack.spot())
              .filter(s -> s.id().equals(step.toId()))
              .findFirst()
              .orElseThrow();
      Point open = new Point(spot.footprint().centre().x(), 8 + 0.45 + 0.455);
      double wayM = SIDES.stream().mapToDouble(open::distanceTo).min().orElseThrow();
      unloadS += 60; // bearers
      double undersideM = topM.getOrDefault(spot.id(), 0.0) + 0.089;
      List<PackedPiece> downwards =
          bundle.orElseThrow().packed().stream()
              .sorted(Comparator.comparingInt(PackedPiece::layer).reversed())
              .toList();
      for (int i = 0; i < downwards.size(); i++) {
        int people = people(downwards.get(i).piece());
        unloadS += people * (wayM / 0.75 + wayM / 1.31) + 20;
        int laidBeneath = 3 - downwards.get(i).layer();
        double heightCm = 100 * (undersideM + (laidBeneath + 0.5) * 0.15);
        pickS += people * 60 * (heightCm > 175 ? 1 : 0.003 * Math.abs(heightCm - 75));
      }
      topM.put(spot.id(), undersideM + 0.45);
    }

    /** 48, 33.6, 30 and 14.4 kg. */
    private static int people(Piece piece) {
      return piece.lengthM() == 4 ? 4 : piece.lengthM() == 2.8 ? 3 : piece.lengthM() == 2.5 ? 2 : 1;
    }
  }

  @Test
  void whereNobodyGetsToFromTheTruckNothingIsPutDown() {
    Spot island = spot("Y1", "yard", 9, 8, 4.5, 0.9);
    SiteBuilder fenced =
        handSite()
            .spots(island)
            .yards(new Yard("yard", Outline.box(5, 6, 30, 12), 70))
            .keepClear("fence", Outline.box(0, 4, 40, 4.2), 0, false);
    Task task = task(fenced.build(), mixed("B1", 1, 1));
    Plan plan = staged(task);
    assertThat(plan.unplaced()).hasSize(1);
    assertThat(plan.unplaced().get(0).rule()).isEqualTo(Rule.PATHS_OPEN);
    assertThat(plan.unplaced().get(0).sentence()).doesNotContain("machine");
  }
}
