package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import skidway.plan.Step;
import skidway.site.Spot;
import skidway.timber.Bundle;

/**
 * Checks what decks, joists, ground, bearers and bundles bear between two moves: one stack may have
 * grown while another, that goes later, still lies beside it, and what is set aside lies somewhere
 * meanwhile. Trucks alone only add to stacks; so once nothing is left to move, nothing is worse
 * than in the end.
 *
 * <p>What broke a rule before a step and is no worse after it is no fault of the step.
 */
final class HalfwayRules {
  private final Scene scene;
  private final Ledger ledger;
  private final Replay replay;
  private long movesLeft;
  private List<Finding> before;

  /**
   * @param replay before its first step
   */
  HalfwayRules(Scene scene, Ledger ledger, Replay replay) {
    this.scene = scene;
    this.ledger = ledger;
    this.replay = replay;
    movesLeft = scene.steps().stream().filter(this::moves).count();
    before = movesLeft > 0 ? findings() : List.of();
  }

  private boolean moves(Step step) {
    return !step.kind().offTruck() && scene.task().start().lies(step.bundleId());
  }

  /** Judges how things stand when a step has been carried out. */
  void after(Step step) {
    if (movesLeft == 0) {
      return;
    }
    movesLeft -= moves(step) ? 1 : 0;
    List<Finding> now = findings();
    ledger.during(" That is so after step " + step.number() + ".");
    now.stream()
        .filter(finding -> isWorse(finding, step))
        .forEach(f -> ledger.broken(f.rule(), f.where(), f.value(), f.limit(), f.sentence()));
    ledger.during("");
    before = now;
  }

  /** A stack that just grew is worse by all that is new; elsewhere the figure tells. */
  private boolean isWorse(Finding finding, Step step) {
    List<Finding> same =
        before.stream()
            .filter(b -> b.rule() == finding.rule() && b.where().equals(finding.where()))
            .toList();
    if (same.contains(finding)) {
      return false;
    }
    return finding.where().equals(step.toId())
        || same.stream().allMatch(b -> beyond(finding) > beyond(b) + 1e-6 * b.limit());
  }

  /** How far a value is beyond its limit, whichever side that is. */
  private static double beyond(Finding finding) {
    return Math.abs(finding.value() - finding.limit());
  }

  private List<Finding> findings() {
    Scene now = scene.halfway(lying(), waiting());
    Ledger taken = new Ledger(scene.task().figures());
    new DeckEdgeRules(now, taken).check();
    new StackRules(now, taken).check();
    new LoadRules(now, taken).check();
    new JoistRules(now, taken).check();
    new GroundRules(now, taken).check();
    return taken.findings();
  }

  private List<Standing> lying() {
    List<Standing> lying = new ArrayList<>();
    for (String spotId : replay.usedSpots()) {
      List<Bundle> bundles = replay.lyingOn(spotId).stream().flatMap(this::delivered).toList();
      Optional<Spot> spot = scene.spot(spotId);
      if (spot.isPresent() && !bundles.isEmpty()) {
        lying.add(
            Standing.stacked(
                spot.get(), scene.zone(spot.get()), bundles, replay.bearersUnder(bundles.get(0))));
      }
    }
    return lying;
  }

  private List<Standing> waiting() {
    return replay.stillWaiting().entrySet().stream().flatMap(this::waiting).toList();
  }

  private Stream<Standing> waiting(Map.Entry<String, String> bundleAtPlace) {
    return scene.spot(bundleAtPlace.getKey()).stream()
        .flatMap(
            spot ->
                delivered(bundleAtPlace.getValue())
                    .flatMap(
                        bundle ->
                            replay.bearersUnder(bundle).stream()
                                .map(
                                    row -> Standing.waiting(spot, scene.zone(spot), bundle, row))));
  }

  private Stream<Bundle> delivered(String bundleId) {
    return scene.task().delivery().bundle(bundleId).stream();
  }
}
