package skidway.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.site.SpotKind;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;

/** Looks up, in the order in which walls go up, where each piece lies and what lies over it. */
public final class PullList {
  private record Found(Bundle bundle, PackedPiece packed, int layer) {}

  /** A bundle's place: its stack, and how many bundles are beneath it. */
  private record Berth(Stack stack, int at) {
    boolean rack() {
      return stack.spot().kind() == SpotKind.RACK;
    }
  }

  private final Task task;
  private final PullOrder order;
  private final Team team;
  private final Map<String, Found> byMark = new HashMap<>();
  private final Map<String, Berth> byBundle = new HashMap<>();
  private final Map<String, Piled> byPile = new HashMap<>();

  /** For each piece that a wave brings to a pile how many are laid when it leaves its bundle. */
  private final Map<String, Integer> leaves = new HashMap<>();

  private PullList(Task task, Plan plan, List<Wave> waves) {
    this.task = task;
    this.order = task.pullOrder();
    this.team = new Team(task.settings());
    for (Bundle bundle : task.delivery().bundles()) {
      bundle
          .packed()
          .forEach(
              p -> byMark.put(p.piece().mark(), new Found(bundle, p, task.layerOnSpot(bundle, p))));
    }
    for (Stack stack : plan.stacks()) {
      List<String> ids = stack.bundleIds();
      for (int at = 0; at < ids.size(); at++) {
        byBundle.putIfAbsent(ids.get(at), new Berth(stack, at));
      }
    }
    waves.forEach(this::piles);
  }

  private void piles(Wave wave) {
    for (TimberPile pile : wave.piles()) {
      for (int at = 0; at < pile.layers().size(); at++) {
        for (String mark : pile.layers().get(at)) {
          byPile.put(mark, new Piled(pile.id(), wave.number(), at + 1, pile.layers().size()));
          leaves.put(mark, wave.laidBefore());
        }
      }
    }
  }

  /** A line for each piece, first pulled first; each straight from its bundle. */
  public static List<PullLine> of(Task task, Plan plan) {
    return of(task, plan, List.of());
  }

  /** The same with the pieces on piles that waves have brought there by then. */
  public static List<PullLine> of(Task task, Plan plan, List<Wave> waves) {
    PullList list = new PullList(task, plan, waves);
    return IntStream.range(0, list.order.placements().size()).mapToObj(list::line).toList();
  }

  private PullLine line(int index) {
    Placement placement = order.placements().get(index);
    Found found = Optional.ofNullable(byMark.get(placement.piece().mark())).orElseThrow();
    Optional<Berth> berth = Optional.ofNullable(byBundle.get(found.bundle().id()));
    Optional<Piled> piled = Optional.ofNullable(byPile.get(placement.piece().mark()));
    return new PullLine(
        index + 1,
        placement,
        found.bundle(),
        found.layer(),
        berth.map(b -> b.stack().spot()),
        berth.map(b -> b.rack() ? 0 : b.at() + 1).orElse(0),
        team.people(placement.piece()),
        team.needsDevice(placement.piece()),
        piled,
        piled.isPresent() ? List.of() : berth.map(b -> over(b, found, index)).orElse(List.of()));
  }

  private List<PullLine.Over> over(Berth berth, Found found, int index) {
    if (berth.rack()) {
      return List.of();
    }
    List<String> ids = berth.stack().bundleIds();
    List<String> above = new ArrayList<>(ids.subList(berth.at() + 1, ids.size()));
    Collections.reverse(above);
    Stream<PullLine.Over> higherTiers =
        above.stream()
            .flatMap(id -> task.delivery().bundle(id).stream())
            .flatMap(bundle -> stillThere(bundle, bundle.pieces(), index));
    List<Piece> higherLayers = task.aboveOnSpot(found.bundle(), found.packed());
    return Stream.concat(higherTiers, stillThere(found.bundle(), higherLayers, index)).toList();
  }

  /**
   * Those pieces of a bundle that are in it at a turn and needed after its level, first needed
   * first. What is needed on the same level is taken first without being moved aside.
   */
  private Stream<PullLine.Over> stillThere(Bundle bundle, List<Piece> pieces, int index) {
    return pieces.stream()
        .filter(piece -> order.turn(order.indexOf(piece)) > order.turn(index))
        .filter(piece -> leaves.getOrDefault(piece.mark(), Integer.MAX_VALUE) > index)
        .sorted(Comparator.comparingInt(order::indexOf))
        .map(piece -> new PullLine.Over(piece.mark(), bundle.id()));
  }
}
