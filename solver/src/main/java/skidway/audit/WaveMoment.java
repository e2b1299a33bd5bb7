package skidway.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.erection.Placement;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.rules.Setting;
import skidway.site.Wall;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Piece;

/**
 * The site when all piles of a wave are full, as a plan that can be judged like any other: the
 * walls as high as they are whole, every bundle that is there until the wave is used up, with all
 * that ever was in it, and each pile as one more bundle. So loads are never told too low: what was
 * brought to a pile counts twice.
 */
final class WaveMoment {
  private final Task task;
  private final Plan plan;
  private final OnSite onSite;
  private final Map<String, Piece> pieces = new HashMap<>();

  WaveMoment(Task task, Plan plan) {
    this.task = task;
    this.plan = plan;
    onSite = OnSite.of(task);
    task.delivery().pieces().forEach(piece -> pieces.put(piece.mark(), piece));
  }

  /** The moment with all piles, or with none for comparison. */
  Scene scene(Wave wave, boolean withPiles) {
    List<Bundle> bundles = new ArrayList<>();
    List<Stack> stacks = new ArrayList<>();
    Map<String, BearerRow> bearers = new LinkedHashMap<>();
    for (Stack stack : plan.stacks()) {
      List<Bundle> there = there(stack, wave);
      if (!there.isEmpty()) {
        bundles.addAll(there);
        stacks.add(new Stack(stack.spot(), there.stream().map(Bundle::id).toList()));
        bearers(stack, there.get(0)).ifPresent(row -> bearers.put(there.get(0).id(), row));
      }
    }
    for (TimberPile pile : withPiles ? wave.piles() : List.<TimberPile>of()) {
      bundles.add(asBundle(pile));
      stacks.add(new Stack(pile.spot(), List.of(pile.id())));
      bearers.put(pile.id(), pile.bearers());
    }
    Task then = then(wave, new Delivery(task.delivery().loads(), bundles), stacks, bearers);
    return new Scene(then, plan.standing(stacks), new OnSite(then, arrival -> 0));
  }

  private List<Bundle> there(Stack stack, Wave wave) {
    return stack.bundleIds().stream()
        .map(task.delivery()::bundle)
        .flatMap(Optional::stream)
        .filter(bundle -> onSite.comesAfter(bundle) < Math.max(1, wave.laidAfter()))
        .filter(bundle -> onSite.goesAfter(bundle) > wave.laidBefore())
        .toList();
  }

  private Optional<BearerRow> bearers(Stack stack, Bundle lowest) {
    return plan.steps().stream()
        .filter(step -> !step.kind().waits() && step.toId().equals(stack.spot().id()))
        .filter(step -> step.bundleId().equals(lowest.id()))
        .map(Step::bearers)
        .findFirst()
        .or(() -> Optional.ofNullable(task.start().bearers().get(lowest.id())));
  }

  /** As long as the shortest piece of the lowest layer and as wide as all of that layer. */
  private Bundle asBundle(TimberPile pile) {
    List<Piece> lowest = known(pile.layers().isEmpty() ? List.of() : pile.layers().get(0));
    double massKg = known(pile.marks()).stream().mapToDouble(p -> p.mass().highKg()).sum();
    return new Bundle(
        pile.id(),
        "",
        0,
        lowest.stream().mapToDouble(Piece::lengthM).min().orElse(0),
        lowest.stream().mapToDouble(p -> p.section().widthM()).sum(),
        pile.heightM() - task.settings().get(Setting.BEARER_HEIGHT),
        OptionalDouble.of(massKg),
        List.of());
  }

  private List<Piece> known(List<String> marks) {
    return marks.stream().flatMap(mark -> Optional.ofNullable(pieces.get(mark)).stream()).toList();
  }

  private Task then(
      Wave wave, Delivery delivery, List<Stack> stacks, Map<String, BearerRow> bearers) {
    Start start = new Start(stacks, bearers, List.of(), task.start().fixed(), task.start().held());
    List<Wall> walls =
        task.site().walls().stream()
            .map(wall -> wall.standing(wholeM(wall, wave.laidBefore())))
            .toList();
    return new Task(
        task.jobName(),
        task.site().withWalls(walls),
        delivery,
        task.settings(),
        task.schedule(),
        task.figures(),
        start);
  }

  /** A wall is whole up to its lowest piece that is still to be laid. */
  private double wholeM(Wall wall, int laid) {
    List<Placement> order = task.pullOrder().placements();
    double topM = 0;
    double lowestToComeM = Double.POSITIVE_INFINITY;
    for (int i = 0; i < order.size(); i++) {
      Placement piece = order.get(i);
      if (piece.wall().id().equals(wall.id())) {
        if (i < laid) {
          topM = Math.max(topM, piece.topM());
        } else {
          lowestToComeM = Math.min(lowestToComeM, piece.bottomM());
        }
      }
    }
    return Math.max(wall.builtM(), Math.min(topM, lowestToComeM));
  }
}
