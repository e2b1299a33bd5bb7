package skidway.testkit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import skidway.limits.Bearers;
import skidway.plan.Effort;
import skidway.plan.Plan;
import skidway.plan.Search;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.ChartRow;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/**
 * A plan written by hand. Unless steps are given, each stacked bundle comes off its truck in the
 * delivery's order straight onto its stack, from the machine stand nearest to it.
 */
public final class PlanBuilder {
  private final List<Stack> stacks = new ArrayList<>();
  private final List<Spot> waitingPlaces = new ArrayList<>();
  private final List<Unplaced> unplaced = new ArrayList<>();
  private Optional<List<Step>> givenSteps = Optional.empty();
  private UnaryOperator<BearerRow> bearers = row -> row;
  private Effort effort = Effort.NONE;

  public static PlanBuilder aPlan() {
    return new PlanBuilder();
  }

  /** Bundles on a spot, bottom to top. */
  public PlanBuilder stack(Spot spot, String... bundleIds) {
    stacks.add(new Stack(spot, List.of(bundleIds)));
    return this;
  }

  public PlanBuilder waiting(Spot spot) {
    waitingPlaces.add(spot);
    return this;
  }

  public PlanBuilder unplaced(String bundleId) {
    unplaced.add(new Unplaced(bundleId, Rule.PLACED, "No spot is left for it."));
    return this;
  }

  public PlanBuilder steps(Step... some) {
    givenSteps = Optional.of(List.of(some));
    return this;
  }

  /** Changes the bearers that every step is told to lay. */
  public PlanBuilder bearers(UnaryOperator<BearerRow> change) {
    bearers = change;
    return this;
  }

  public PlanBuilder effort(Effort some) {
    effort = some;
    return this;
  }

  public Plan build(Task task) {
    return new Plan(
        task.jobName(),
        1,
        "",
        "",
        new Search(0, 0, false),
        stacks,
        waitingPlaces,
        givenSteps.orElseGet(() -> straightSteps(task)).stream().map(this::withBearers).toList(),
        List.of(),
        unplaced,
        effort,
        List.of(),
        List.of());
  }

  private Step withBearers(Step s) {
    return new Step(
        s.number(),
        s.kind(),
        s.bundleId(),
        s.fromId(),
        s.toId(),
        s.tier(),
        s.standId(),
        s.reachM(),
        s.massKg(),
        s.capacityKg(),
        bearers.apply(s.bearers()),
        s.pickStandId());
  }

  private List<Step> straightSteps(Task task) {
    List<Step> steps = new ArrayList<>();
    for (Bundle bundle : task.delivery().bundles()) {
      for (Stack stack : stacks) {
        int at = stack.bundleIds().indexOf(bundle.id());
        if (at >= 0) {
          int tier = stack.spot().kind() == SpotKind.RACK ? 0 : at + 1;
          steps.add(place(task, steps.size() + 1, bundle, stack.spot(), tier));
        }
      }
    }
    return steps;
  }

  /** The step that takes a bundle off its truck and puts it down on a spot. */
  public static Step place(Task task, int number, Bundle bundle, Spot to, int tier) {
    return step(task, number, StepKind.PLACE, bundle, bundle.loadId(), to, to, tier);
  }

  /** The step that takes a bundle off its truck and puts it down to wait. */
  public static Step setDown(Task task, int number, Bundle bundle, Spot waiting) {
    return step(task, number, StepKind.SET_DOWN, bundle, bundle.loadId(), waiting, waiting, 1);
  }

  /** The step that lifts a bundle from where it waits onto its stack. */
  public static Step liftOn(Task task, int number, Bundle bundle, Spot waiting, Spot to, int tier) {
    return step(task, number, StepKind.LIFT_ON, bundle, waiting.id(), waiting, to, tier);
  }

  /** The step that brings a bundle from where it lay to another stack. */
  public static Step move(Task task, int number, Bundle bundle, Spot from, Spot to, int tier) {
    return step(task, number, StepKind.MOVE, bundle, from.id(), from, to, tier);
  }

  /** The step that takes a bundle from where it lay to a waiting place. */
  public static Step setAside(Task task, int number, Bundle bundle, Spot from, Spot waiting) {
    return step(task, number, StepKind.SET_ASIDE, bundle, from.id(), from, waiting, 1);
  }

  private static Step step(
      Task task,
      int number,
      StepKind kind,
      Bundle bundle,
      String fromId,
      Spot source,
      Spot to,
      int tier) {
    BearerRow bearers =
        to.kind() == SpotKind.RACK && kind != StepKind.SET_DOWN
            ? BearerRow.NONE
            : bearersOf(task).fewest(bundle.lengthM(), bundle.widthM(), 0);
    if (task.site().byHand()) {
      double kg = bundle.mass().highKg();
      return new Step(number, kind, bundle.id(), fromId, to.id(), tier, "", 0, kg, 0, bearers);
    }
    Point end = to.footprint().centre();
    MachineStand stand =
        task.site().machine().stands().stream()
            .min(Comparator.comparingDouble(s -> s.at().distanceTo(end)))
            .orElseThrow();
    double reachM =
        Math.max(stand.at().distanceTo(end), stand.at().distanceTo(source.footprint().centre()));
    double capacityKg =
        task.site().machine().chart().stream()
            .filter(row -> row.reachM() >= reachM)
            .mapToDouble(ChartRow::capacityKg)
            .findFirst()
            .orElse(0);
    return new Step(
        number,
        kind,
        bundle.id(),
        fromId,
        to.id(),
        tier,
        stand.id(),
        reachM,
        bundle.mass().highKg(),
        capacityKg,
        bearers);
  }

  private static Bearers bearersOf(Task task) {
    Settings settings = task.settings();
    return new Bearers(
        settings.get(Setting.BEARER_WIDTH),
        settings.get(Setting.BEARER_SPACING),
        settings.get(Setting.BEARER_CLOSEST),
        settings.get(Setting.BEARER_PROUD));
  }
}
