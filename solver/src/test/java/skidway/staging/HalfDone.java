package skidway.staging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import skidway.erection.Placement;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;

/** A job as it is when the first load is down and some of its pieces are on the walls. */
final class HalfDone {
  private final Task task;
  private final Plan plan;
  private final Map<String, List<String>> lying = new LinkedHashMap<>();
  private final Map<String, BearerRow> bearers = new HashMap<>();

  private HalfDone(Task task, Plan plan) {
    this.task = task;
    this.plan = plan;
  }

  /**
   * The rest of a job.
   *
   * @param mostPulls no more pieces are pulled, and none after the first that is not there
   * @param random locks some bundles and holds some pieces back
   */
  static Task of(Task task, Plan plan, int mostPulls, Random random, Settings settings) {
    HalfDone done = new HalfDone(task, plan);
    done.unloadFirst();
    return done.rest(mostPulls, random, settings);
  }

  private void unloadFirst() {
    String first = task.delivery().loads().get(0).id();
    for (Step step : plan.steps()) {
      Bundle bundle = task.delivery().bundle(step.bundleId()).orElseThrow();
      if (!bundle.loadId().equals(first)) {
        return;
      }
      lying.values().forEach(pile -> pile.remove(bundle.id()));
      lying.computeIfAbsent(step.toId(), s -> new ArrayList<>()).add(bundle.id());
      bearers.put(bundle.id(), step.bearers());
    }
  }

  private Task rest(int mostPulls, Random random, Settings settings) {
    Set<String> there = new HashSet<>();
    lying.values().forEach(there::addAll);
    Map<String, String> bundleOf = new HashMap<>();
    task.delivery()
        .bundles()
        .forEach(b -> b.pieces().forEach(piece -> bundleOf.put(piece.mark(), b.id())));
    Map<String, Double> fromLeftM = new HashMap<>();
    Set<String> pulled = new HashSet<>();
    Set<String> fixed = new HashSet<>();
    boolean waits = false;
    for (Placement placement : task.pullOrder().placements()) {
      String mark = placement.piece().mark();
      fromLeftM.put(mark, placement.fromM());
      waits |= !there.contains(bundleOf.get(mark)) || pulled.size() >= mostPulls;
      if (!waits) {
        pulled.add(mark);
        fixed.add(bundleOf.get(mark));
      }
    }
    List<Bundle> bundles = new ArrayList<>();
    for (Bundle bundle : task.delivery().bundles()) {
      Bundle left = without(bundle, pulled, fromLeftM);
      if (!left.packed().isEmpty()) {
        bundles.add(left);
        if (there.contains(bundle.id()) && random.nextInt(10) == 0) {
          fixed.add(bundle.id());
        }
      }
    }
    Set<String> leftIds = new HashSet<>();
    bundles.forEach(bundle -> leftIds.add(bundle.id()));
    fixed.retainAll(leftIds);
    lying.values().forEach(pile -> pile.retainAll(leftIds));
    bearers.keySet().retainAll(leftIds);
    Set<String> held = new HashSet<>();
    for (Bundle bundle : bundles) {
      for (Piece piece : bundle.pieces()) {
        if (random.nextInt(12) == 0) {
          held.add(piece.mark());
        }
      }
    }
    return new Task(
        task.jobName(),
        task.site(),
        new Delivery(task.delivery().loads(), bundles),
        settings,
        task.schedule(),
        task.figures(),
        new Start(stacks(), bearers, marked(), fixed, held));
  }

  private static Bundle without(Bundle bundle, Set<String> pulled, Map<String, Double> fromLeftM) {
    List<PackedPiece> left =
        bundle.packed().stream()
            .filter(packed -> !pulled.contains(packed.piece().mark()))
            .map(packed -> new PackedPiece(at(packed.piece(), fromLeftM), packed.layer()))
            .toList();
    return new Bundle(
        bundle.id(),
        bundle.loadId(),
        bundle.offOrder(),
        bundle.lengthM(),
        bundle.widthM(),
        bundle.heightM(),
        bundle.weighedKg(),
        left);
  }

  private static Piece at(Piece p, Map<String, Double> fromLeftM) {
    return new Piece(
        p.mark(),
        p.wallId(),
        p.course(),
        p.position(),
        OptionalDouble.of(fromLeftM.getOrDefault(p.mark(), 0.0)),
        p.lengthM(),
        p.section(),
        p.species(),
        p.moisture(),
        p.weighedKg());
  }

  private List<Stack> stacks() {
    return lying.entrySet().stream()
        .filter(pile -> !pile.getValue().isEmpty())
        .map(pile -> new Stack(spot(pile.getKey()), pile.getValue()))
        .toList();
  }

  private List<Spot> marked() {
    List<Spot> marked = new ArrayList<>();
    plan.stacks().stream().map(Stack::spot).distinct().forEach(marked::add);
    marked.addAll(plan.waitingPlaces());
    return marked;
  }

  private Spot spot(String id) {
    return marked().stream().filter(spot -> spot.id().equals(id)).findFirst().orElseThrow();
  }
}
