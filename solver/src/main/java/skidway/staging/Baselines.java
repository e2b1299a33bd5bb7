package skidway.staging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import skidway.plan.Baseline;
import skidway.plan.Effort;
import skidway.site.Zone;

/**
 * Prices what a crew would do without a plan, under the same rules and prices. Paths shut by stacks
 * are not held against them, nor the way to a waiting place, so they look a little better than they
 * are.
 */
final class Baselines {
  private final StagingSolution.Ground ground;
  private final Board board;

  Baselines(StagingSolution.Ground ground) {
    this.ground = ground;
    this.board = ground.board();
  }

  List<Baseline> all() {
    return List.of(asItComes(), longestFirst());
  }

  private Baseline asItComes() {
    Attempt attempt = new Attempt();
    for (int b = 0; b < board.bundleCount(); b++) {
      attempt.placeNearest(b, IntStream.range(0, board.spotCount()).boxed().toList());
    }
    return attempt.result(
        "as it comes",
        "Each bundle, as it comes off, to the free legal spot nearest to its walls.");
  }

  private Baseline longestFirst() {
    Attempt attempt = new Attempt();
    List<Integer> byLength =
        IntStream.range(0, board.bundleCount())
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer b) -> -board.bundles.get(b).lengthM())
                    .thenComparing(b -> b))
            .toList();
    for (int b : byLength) {
      for (Zone zone : board.task.site().zones()) {
        List<Integer> inZone =
            IntStream.range(0, board.spotCount())
                .filter(s -> board.spots.get(s).zoneId().equals(zone.id()))
                .boxed()
                .toList();
        if (attempt.placeNearest(b, inZone)) {
          break;
        }
      }
    }
    return attempt.result(
        "longest first", "Longest bundles first, zone by zone, each where it is nearest.");
  }

  /** A staging built one bundle on top of the other. */
  private final class Attempt {
    private final Occupancy occupancy = ground.empty();
    private final List<List<Integer>> orders = new ArrayList<>();

    Attempt() {
      for (int s = 0; s < board.spotCount(); s++) {
        orders.add(new ArrayList<>());
      }
    }

    boolean placeNearest(int bundle, List<Integer> spots) {
      List<Integer> near =
          spots.stream()
              .filter(s -> board.placeMs[bundle][s] != Board.REFUSED)
              .sorted(
                  Comparator.comparingLong((Integer s) -> board.carryMs[bundle][s])
                      .thenComparing(s -> s))
              .toList();
      for (int spot : near) {
        if (takes(bundle, spot) && staysWithinSharedLimits(bundle, spot)) {
          orders.get(spot).add(bundle);
          return true;
        }
      }
      return false;
    }

    private boolean takes(int bundle, int spot) {
      if (occupancy.count(spot) == 0) {
        return occupancy.free(spot);
      }
      if (board.rack[spot]) {
        occupancy.put(bundle, spot);
        boolean legal = occupancy.legal();
        occupancy.take(bundle);
        return legal;
      }
      List<Integer> order = new ArrayList<>(orders.get(spot));
      order.add(bundle);
      return priced(order, spot).legal();
    }

    private boolean staysWithinSharedLimits(int bundle, int spot) {
      occupancy.put(bundle, spot);
      if (occupancy.overloaded()) {
        occupancy.take(bundle);
        return false;
      }
      return true;
    }

    private StackCost priced(List<Integer> order, int spot) {
      return ground
          .evaluator()
          .inOrder(order.stream().mapToInt(Integer::intValue).toArray(), order.size(), spot);
    }

    Baseline result(String name, String sentence) {
      int placed = 0;
      Effort effort = Effort.NONE;
      for (int s = 0; s < board.spotCount(); s++) {
        List<Integer> order = orders.get(s);
        placed += order.size();
        for (int b : order) {
          effort = effort.plus(Efforts.ofBundle(board, b, s));
        }
        if (!order.isEmpty() && !board.rack[s]) {
          effort = effort.plus(Efforts.ofStack(priced(order, s)));
        }
      }
      return new Baseline(name, sentence, placed, effort);
    }
  }
}
