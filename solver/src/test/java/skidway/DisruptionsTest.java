package skidway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.audit.Finding;
import skidway.erection.HoldPoint;
import skidway.erection.Placement;
import skidway.job.History;
import skidway.job.Job;
import skidway.job.JobReader;
import skidway.plan.Baseline;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.progress.Event;
import skidway.progress.Progress;
import skidway.progress.Remaining;
import skidway.rules.Rule;
import skidway.staging.SearchLimits;
import skidway.staging.StopButton;
import skidway.timber.Bundle;
import skidway.timber.Load;

/**
 * Something happens, and the rest is planned anew: the new plan must stand the audit and never take
 * longer than changing nothing, nor than planning as if nothing lay there, moves counted.
 */
class DisruptionsTest {
  private static final LocalDateTime NOON = LocalDateTime.of(2031, 6, 2, 12, 0);

  @ParameterizedTest
  @CsvSource({"cabin, 1", "cabin, 2", "l-house, 3", "l-house, 4"})
  void theRestIsPlannedNoWorseThanByChangingNothing(String demo, long seed) {
    Job job = job(demo);
    check(job, first(job, 4000), seed, 4000);
  }

  /** Where stacks must be built, few places are left to wait at. */
  @Test
  void onATinyYardTheRestIsPlannedNoWorseEither(@TempDir Path folder) throws IOException {
    Job job = tinyYard(folder);
    check(job, first(job, 2000), 5, 2000);
  }

  /**
   * Many disruptions each, 20 or {@code -Dskidway.disruptions}, searched with 100,000 calculations
   * or {@code -Dskidway.effort}; prints what they cost.
   */
  @Test
  @Tag("long")
  void manyDisruptions(@TempDir Path folder) throws IOException {
    long effort = Long.getLong("skidway.effort", 100_000);
    for (Job job : List.of(job("cabin"), tinyYard(folder), job("l-house"))) {
      Plan plan = first(job, effort);
      for (long seed = 1; seed <= Long.getLong("skidway.disruptions", 20); seed++) {
        check(job, plan, seed, effort);
      }
    }
  }

  /** The cabin with a third of its yard. */
  private static Job tinyYard(Path folder) throws IOException {
    Path cabin = Path.of("..", "demo-data", "cabin");
    for (String name : List.of("job.json", "pieces.csv", "bundles.csv", "loads.csv")) {
      Files.copy(cabin.resolve(name), folder.resolve(name));
    }
    String site = Files.readString(cabin.resolve("site.json"));
    String tiny =
        site.replace(
            "[[4, 4], [25, 4], [25, 10.4], [4, 10.4]]",
            "[[8.5, 7], [19, 7], [19, 10.4], [8.5, 10.4]]");
    assertThat(tiny).isNotEqualTo(site);
    Files.writeString(folder.resolve("site.json"), tiny);
    return JobReader.read(folder);
  }

  private static Job job(String demo) {
    return JobReader.read(Path.of("..", "demo-data", demo));
  }

  private static Plan first(Job job, long calculations) {
    return Planner.plan(job, new SearchLimits(1, calculations), (p, d, s) -> {}, new StopButton())
        .plan();
  }

  private static void check(Job job, Plan plan, long seed, long calculations) {
    History history = new History(job, List.of(plan), disruption(job, plan, new Random(seed)));
    assertThat(history.progress().contradictions()).isEmpty();
    Planner.Planned planned =
        Planner.replan(
            history,
            Set.of(),
            new SearchLimits(seed, calculations),
            (p, d, s) -> {},
            new StopButton());
    Set<String> cannotBeMended =
        history.remaining(Set.of()).start().stacks().stream()
            .filter(s -> s.bundleIds().stream().anyMatch(b -> isFixed(history, b)))
            .map(s -> s.spot().id())
            .collect(Collectors.toSet());
    List<Finding> findings =
        planned.audit().findings().stream()
            .filter(f -> f.rule() != Rule.PLACED && !cannotBeMended.contains(f.where()))
            .filter(f -> !f.sentence().contains("nobody told of its bearers"))
            .toList();
    assertThat(findings).isEmpty();
    int placed =
        history.remaining(Set.of()).delivery().bundles().size() - planned.plan().unplaced().size();
    System.out.printf(
        "%s %d: %d placed, %.0f s",
        job.task().jobName(), seed, placed, planned.plan().effort().totalS());
    for (Baseline other : planned.plan().baselines()) {
      System.out.printf("; %s %d, %.0f s", other.name(), other.placed(), other.effort().totalS());
      assertThat(placed).isGreaterThanOrEqualTo(other.placed());
      if (placed == other.placed()) {
        assertThat(planned.plan().effort().totalS())
            .isLessThanOrEqualTo(other.effort().totalS() + 1);
      }
    }
    System.out.printf("; moves %.0f s%n", planned.plan().effort().moveS());
  }

  private static boolean isFixed(History history, String bundleId) {
    return history.remaining(Set.of()).start().fixed().contains(bundleId);
  }

  /**
   * Load by load comes down; then some of: a late load, a lost bundle, a broken piece, a detour.
   */
  private static List<Event> disruption(Job job, Plan plan, Random random) {
    Script script = new Script(job, plan);
    List<Load> loads = job.task().delivery().loads();
    int here = loads.size() == 1 ? 1 : 1 + random.nextInt(loads.size() - 1);
    for (Load load : loads.subList(0, here)) {
      script.add(seq -> new Event.Arrived(seq, NOON, "test", load.id()));
    }
    List<Bundle> down =
        job.task().delivery().bundles().stream()
            .filter(b -> loads.subList(0, here).stream().anyMatch(l -> l.id().equals(b.loadId())))
            .toList();
    if (random.nextBoolean()) {
      String lost = down.get(random.nextInt(down.size())).id();
      script.add(seq -> new Event.Missing(seq, NOON, "test", lost));
    }
    boolean detour = random.nextBoolean();
    for (Stack stack : plan.stacks()) {
      for (String id : stack.bundleIds()) {
        script.place(id, stack.spot().id(), detour && random.nextInt(8) == 0 ? random : null);
      }
    }
    if (here < loads.size()) {
      String late = loads.get(here).id();
      LocalDateTime until = loads.get(here).arrival().plusDays(1 + random.nextInt(5));
      script.add(seq -> new Event.Late(seq, NOON, "test", late, until));
    }
    HoldPoint hold = Remaining.hold(job.task(), script.progress());
    List<Placement> can =
        hold.resequenced().stream().filter(p -> script.lies(p.piece().mark())).toList();
    List<String> pulled = new ArrayList<>();
    for (Placement p : can.subList(0, can.isEmpty() ? 0 : random.nextInt(can.size() / 2 + 1))) {
      pulled.add(p.piece().mark());
    }
    if (!pulled.isEmpty()) {
      script.add(seq -> new Event.Pulled(seq, NOON, "test", "", pulled));
    }
    if (random.nextBoolean()) {
      String broken =
          job.task()
              .delivery()
              .pieces()
              .get(random.nextInt(job.task().delivery().pieces().size()))
              .mark();
      script.add(seq -> new Event.Damaged(seq, NOON, "test", broken));
    }
    return script.events;
  }

  /** Events, each taken only if nothing speaks against it. */
  private static final class Script {
    private final Job job;
    private final Plan plan;
    private final List<Event> events = new ArrayList<>();

    Script(Job job, Plan plan) {
      this.job = job;
      this.plan = plan;
    }

    Progress progress() {
      return Progress.of(job.task(), plan, events);
    }

    void add(java.util.function.IntFunction<Event> event) {
      Event next = event.apply(events.size() + 1);
      if (progress().check(next).isEmpty()) {
        events.add(next);
      }
    }

    boolean lies(String mark) {
      return job.task().delivery().bundles().stream()
          .filter(b -> b.pieces().stream().anyMatch(p -> p.mark().equals(mark)))
          .anyMatch(b -> progress().spotOf(b.id()).isPresent());
    }

    void place(String bundleId, String spotId, Random elsewhere) {
      String spot = spotId;
      if (elsewhere != null) {
        List<Stack> stacks = plan.stacks();
        spot = stacks.get(elsewhere.nextInt(stacks.size())).spot().id();
      }
      boolean rack = progress().spots().get(spot).kind() == skidway.site.SpotKind.RACK;
      String at = spot;
      int tier = rack ? 0 : progress().lying().getOrDefault(at, List.of()).size() + 1;
      add(seq -> new Event.Placed(seq, NOON, "test", bundleId, at, tier));
    }
  }
}
