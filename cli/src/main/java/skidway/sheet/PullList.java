package skidway.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.site.SpotKind;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;

/** Looks up, in the order in which walls go up, where each piece lies and what lies over it. */
public final class PullList {
  private record Found(Bundle bundle, int layer) {}

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

  private PullList(Task task, Plan plan) {
    this.task = task;
    this.order = task.pullOrder();
    this.team = new Team(task.settings());
    for (Bundle bundle : task.delivery().bundles()) {
      bundle.packed().forEach(p -> byMark.put(p.piece().mark(), new Found(bundle, p.layer())));
    }
    for (Stack stack : plan.stacks()) {
      List<String> ids = stack.bundleIds();
      for (int at = 0; at < ids.size(); at++) {
        byBundle.putIfAbsent(ids.get(at), new Berth(stack, at));
      }
    }
  }

  /** A line for each piece, first pulled first. */
  public static List<PullLine> of(Task task, Plan plan) {
    PullList list = new PullList(task, plan);
    return IntStream.range(0, list.order.placements().size()).mapToObj(list::line).toList();
  }

  private PullLine line(int index) {
    Placement placement = order.placements().get(index);
    Found found = Optional.ofNullable(byMark.get(placement.piece().mark())).orElseThrow();
    Optional<Berth> berth = Optional.ofNullable(byBundle.get(found.bundle().id()));
    return new PullLine(
        index + 1,
        placement,
        found.bundle(),
        found.layer(),
        berth.map(b -> b.stack().spot()),
        berth.map(b -> b.rack() ? 0 : b.at() + 1).orElse(0),
        team.people(placement.piece()),
        team.needsDevice(placement.piece()),
        berth.map(b -> over(b, index)).orElse(List.of()));
  }

  private List<PullLine.Over> over(Berth berth, int index) {
    if (berth.rack()) {
      return List.of();
    }
    List<String> ids = berth.stack().bundleIds();
    List<String> above = new ArrayList<>(ids.subList(berth.at() + 1, ids.size()));
    Collections.reverse(above);
    return above.stream()
        .flatMap(id -> task.delivery().bundle(id).stream())
        .flatMap(bundle -> stillThere(bundle, index).stream())
        .toList();
  }

  /** Pieces of a bundle that are needed after a turn, first needed first. */
  private List<PullLine.Over> stillThere(Bundle bundle, int index) {
    return bundle.packed().stream()
        .map(PackedPiece::piece)
        .filter(piece -> order.indexOf(piece) > index)
        .sorted(Comparator.comparingInt(order::indexOf))
        .map(piece -> new PullLine.Over(piece.mark(), bundle.id()))
        .toList();
  }
}
