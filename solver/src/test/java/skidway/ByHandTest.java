package skidway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
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
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.progress.AsPlanned;
import skidway.progress.Event;
import skidway.progress.Progress;
import skidway.progress.Remaining;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Machine;
import skidway.site.Outline;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.staging.SearchLimits;
import skidway.staging.Stager;
import skidway.staging.StopButton;
import skidway.testkit.BundleBuilder;
import skidway.testkit.RandomDelivery;
import skidway.testkit.SiteBuilder;
import skidway.timber.Bundle;

/** A site without a machine gets a plan all the same, whose hours are those of people who walk. */
final class ByHandTest {
  private static final LocalDateTime NOON = LocalDateTime.of(2031, 5, 5, 12, 0);
  private static final List<Spot> YARD =
      List.of(
          spot("Y1", "yard", 9, 8, 4.5, 0.9),
          spot("Y2", "yard", 15, 8, 4.5, 0.9),
          spot("Y3", "yard", 23, 8, 4.5, 0.9));

  @TempDir private Path folder = Path.of("");

  private static SiteBuilder handSite() {
    return aSite().machine(Machine.NONE);
  }

  private static Bundle bundle(Task task, String id) {
    return task.delivery().bundle(id).orElseThrow();
  }

  private Plan staged(Task task) {
    Plan plan =
        Stager.stage(
            task,
            new SearchLimits(1, 500),
            new PathFlood(task)::shutBy,
            (placed, delivered, personS) -> {},
            new StopButton());
    int revision = PlanFiles.nextRevision(folder);
    return PlanFiles.read(
        PlanFiles.write(folder, plan.labelled(revision, "inputs", "", Heeded.NONE)), task);
  }

  private static Bundle mixed(String id, int offOrder, int course) {
    return mixed(id, "L1", offOrder, course);
  }

  /** Three layers of timbers that one, two, three and four people carry. */
  private static Bundle mixed(String id, String load, int offOrder, int course) {
    BundleBuilder bundle = aBundle(id).load(load, offOrder).size(4, 0.6, 0.45);
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
    StraightWalks walks = new StraightWalks(plan);
    plan.steps().forEach(step -> walks.unload(step, bundle(task, step.bundleId())));
    assertThat(plan.effort().offTruckS()).isCloseTo(walks.unloadS(), within(0.1));
    assertThat(plan.effort().pickS()).isCloseTo(walks.pickS(), within(0.1));
    assertThat(plan.effort().machineS()).isZero();
    assertThat(plan.effort().setDownS()).isZero();
  }

  /**
   * The first truck is unloaded, a timber is in the wall, the second truck is late: what lies
   * stays, and only what is still to come is walked.
   */
  @Test
  void whatLiesStaysAndOnlyTheRestIsCarriedOffATruck() {
    Task task =
        task(
            handSite().spots(YARD.toArray(Spot[]::new)).build(),
            mixed("B1", 1, 1),
            mixed("B2", 2, 3),
            mixed("B3", "L2", 1, 5),
            mixed("B4", "L2", 2, 7));
    Plan first = staged(task);
    List<Event> events = new ArrayList<>();
    events.add(new Event.Arrived(1, NOON, "test", "L1"));
    AsPlanned.of(first, "L1")
        .forEach(
            put ->
                events.add(
                    new Event.Placed(
                        events.size() + 1,
                        NOON,
                        "test",
                        put.bundleId(),
                        put.spotId(),
                        put.tier())));
    String laid = task.pullOrder().placements().get(0).piece().mark();
    events.add(new Event.Pulled(events.size() + 1, NOON, "test", "", List.of(laid)));
    events.add(new Event.Late(events.size() + 1, NOON, "test", "L2", NOON.plusDays(3)));
    Progress progress = Progress.of(task, first, events);
    assertThat(progress.contradictions()).isEmpty();
    Task left = Remaining.of(task, List.of(first), progress, Set.of());
    Plan plan = staged(left);

    assertThat(Audit.of(left, plan).findings()).isEmpty();
    assertThat(plan.steps()).extracting(Step::bundleId).containsExactly("B3", "B4");
    assertThat(plan.steps()).extracting(Step::kind).containsOnly(StepKind.PLACE);
    for (Stack lying : left.start().stacks()) {
      assertThat(plan.stacks())
          .filteredOn(stack -> stack.spot().id().equals(lying.spot().id()))
          .singleElement()
          .satisfies(stack -> assertThat(stack.bundleIds()).startsWith(ids(lying)));
    }
    StraightWalks walks = new StraightWalks(plan);
    left.start().stacks().forEach(s -> s.bundleIds().forEach(b -> walks.lies(s, bundle(left, b))));
    plan.steps().forEach(step -> walks.unload(step, bundle(left, step.bundleId())));
    assertThat(plan.effort().offTruckS()).isCloseTo(walks.unloadS(), within(0.1));
    assertThat(plan.effort().pickS()).isCloseTo(walks.pickS(), within(0.1));
    assertThat(plan.effort().moveS()).isZero();
  }

  /**
   * Where laying takes no time it would pay to carry it nearer to its walls, but nobody plans that.
   */
  @Test
  void whatWasPutFarFromItsWallsStaysThere() {
    Spot far = spot("F1", "far", 36, 8, 4.5, 0.9);
    Site site =
        handSite()
            .spots(YARD.get(0), YARD.get(1), far)
            .yards(
                new Yard("yard", Outline.box(5, 6, 30, 12), 70),
                new Yard("far", Outline.box(32, 5, 40, 12), 70))
            .build();
    Settings.Change nothing = new Settings.Change(0.1, "test");
    Settings settings =
        new Settings(Map.of(Setting.LAY_PIECE, nothing, Setting.PILE_SET_UP, nothing));
    Task task = task(site, settings, mixed("B1", 1, 1), mixed("B2", "L2", 1, 3));
    Plan first = staged(task);
    assertThat(first.stacks()).noneMatch(stack -> stack.spot().id().equals("F1"));
    List<Event> events =
        List.of(
            new Event.Arrived(1, NOON, "test", "L1"),
            new Event.Placed(2, NOON, "test", "B1", "F1", 1));
    Progress progress = Progress.of(task, first, events);
    Plan plan = staged(Remaining.of(task, List.of(first), progress, Set.of()));
    assertThat(plan.stacks())
        .filteredOn(stack -> stack.spot().id().equals("F1"))
        .singleElement()
        .satisfies(stack -> assertThat(stack.bundleIds()).contains("B1"));
    assertThat(plan.steps()).extracting(Step::bundleId).containsExactly("B2");
    // The bound does not move it either, so it meets the plan.
    assertThat(plan.proof()).hasValueSatisfying(proof -> assertThat(proof.isBest()).isTrue());
  }

  private static String[] ids(Stack stack) {
    return stack.bundleIds().toArray(String[]::new);
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
