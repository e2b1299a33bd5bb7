package skidway.shakeout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import skidway.rules.Setting;

/**
 * Looks for the best piles of one wave: again and again the pile that saves most, filled as well as
 * can be and then made better piece by piece, as long as the whole wave gets cheaper; then takes
 * out every piece that does not pay.
 */
final class WaveSearch {
  private final Timbers timbers;
  private final Room room;
  private final Pricing pricing;
  private final Trips trips;
  private final PileBearing bearing;
  private final double overhangM;

  WaveSearch(Timbers timbers, Room room) {
    this.timbers = timbers;
    this.room = room;
    pricing = new Pricing(timbers, room);
    trips = new Trips(timbers, room);
    bearing = new PileBearing(timbers.task);
    overhangM = 2 * timbers.task.settings().get(Setting.END_OVERHANG);
  }

  /** A wave without any pile: every piece is pulled straight. */
  WaveDraft straight(int from, int to) {
    return new WaveDraft(from, to, List.of(), pricing.cost(from, to, List.of()));
  }

  /** Up to where a wave may bring pieces at most: one more than the last of them. */
  int farthest(int from, int near) {
    return mayCome(from, timbers.count(), near).max().orElse(from - 1) + 1;
  }

  /**
   * The best wave that is found, beginning with a shorter one.
   *
   * @param near before this pull any piece may be brought; after it those alone that lie over a
   *     piece from before it, since they would lie about from then on anyway
   * @param heightsM how high a pile may be on each place, 0 where it may not stand
   * @param mostLayers how many layers a place may have at most, for those that turned out too much
   */
  WaveDraft best(
      WaveDraft shorter, int to, int near, double[] heightsM, Map<Integer, Integer> mostLayers) {
    PileRules rules =
        new PileRules(timbers, room, pricing, bearing, overhangM, heightsM, mostLayers);
    List<Integer> mayCome = mayCome(shorter.from(), to, near).boxed().toList();
    List<PileDraft> stillStand =
        shorter.piles().stream()
            .filter(pile -> rules.mayStand(pile.place(), pile.pulls()))
            .toList();
    WaveDraft straight = straight(shorter.from(), to);
    WaveDraft best = cheaper(straight, improved(straight, stillStand, mayCome, rules));
    boolean better = true;
    while (better) {
      WaveDraft next = withOneMore(best, mayCome, rules);
      better = next.cost().totalMs() < best.cost().totalMs();
      best = better ? next : best;
    }
    return thinned(best, rules);
  }

  /**
   * The better of a wave and what is found when one of its piles after the other is left out.
   *
   * @param again looks for the best wave, beginning with another
   */
  WaveDraft withPilesAnew(WaveDraft draft, UnaryOperator<WaveDraft> again) {
    WaveDraft best = draft;
    for (PileDraft pile : draft.piles()) {
      List<PileDraft> others =
          best.piles().stream().filter(other -> other.place() != pile.place()).toList();
      best = cheaper(best, again.apply(priced(draft.from(), draft.to(), others)));
    }
    return best;
  }

  private IntStream mayCome(int from, int to, int near) {
    return IntStream.range(from, to)
        .filter(i -> mayBeBrought(i, from) && (i < near || isDugBefore(i, near)));
  }

  private WaveDraft withOneMore(WaveDraft draft, List<Integer> mayCome, PileRules rules) {
    Prospects prospects = new Prospects(timbers, room, pricing, trips, rules, draft, mayCome);
    WaveDraft best = cheaper(draft, improved(draft, prospects.begun(), mayCome, rules));
    for (PileDraft pile : prospects.filled()) {
      best = cheaper(best, improved(draft, and(draft.piles(), pile), mayCome, rules));
    }
    return best;
  }

  /** The first of equals. */
  static WaveDraft cheaper(WaveDraft one, WaveDraft other) {
    return other.cost().totalMs() < one.cost().totalMs() ? other : one;
  }

  private WaveDraft improved(
      WaveDraft draft, List<PileDraft> piles, List<Integer> mayCome, PileRules rules) {
    int settled = draft.piles().size();
    Trial trial =
        new Trial(timbers, room, pricing, rules, draft.from(), draft.to(), piles, settled, mayCome);
    List<PileDraft> better = new PieceByPiece(trial, mayCome).improved();
    return priced(draft.from(), draft.to(), better);
  }

  private boolean mayBeBrought(int i, int from) {
    return timbers.stack[i] != Timbers.NOWHERE
        && !timbers.upright[i]
        && timbers.comesAfter[i] <= from
        && pricing.perLayer(timbers.piece(i)) > 0;
  }

  /** Whether it is moved aside for a piece beneath it that is pulled before a turn. */
  private boolean isDugBefore(int i, int near) {
    return IntStream.of(timbers.beneath[i])
        .anyMatch(lower -> timbers.turn[lower] < Math.min(near, timbers.turn[i]));
  }

  private WaveDraft priced(int from, int to, List<PileDraft> piles) {
    return new WaveDraft(from, to, piles, pricing.cost(from, to, piles));
  }

  private static List<PileDraft> and(List<PileDraft> piles, PileDraft more) {
    List<PileDraft> all = new ArrayList<>(piles);
    all.add(more);
    return all;
  }

  /** Takes out pieces one by one, as long as the wave gets cheaper without one. */
  private WaveDraft thinned(WaveDraft draft, PileRules rules) {
    WaveDraft best = draft;
    boolean better = true;
    while (better) {
      WaveDraft before = best;
      for (PileDraft pile : before.piles()) {
        for (int pull : pile.pulls()) {
          List<Integer> left = less(pile.pulls(), pull);
          if (left.isEmpty() || rules.bears(pile.place(), left)) {
            WaveDraft without = without(before, pile, pull);
            best = without.cost().totalMs() < best.cost().totalMs() ? without : best;
          }
        }
      }
      better = best.cost().totalMs() < before.cost().totalMs();
    }
    return best;
  }

  private WaveDraft without(WaveDraft draft, PileDraft pile, int pull) {
    List<PileDraft> piles = new ArrayList<>();
    for (PileDraft other : draft.piles()) {
      if (other.place() != pile.place()) {
        piles.add(other);
      } else if (pile.pulls().size() > 1) {
        List<PileDraft.Trip> left =
            pile.trips().stream()
                .map(trip -> less(trip, pull, pile.place()))
                .flatMap(Optional::stream)
                .toList();
        piles.add(new PileDraft(pile.place(), less(pile.pulls(), pull), left));
      }
    }
    return priced(draft.from(), draft.to(), piles);
  }

  private Optional<PileDraft.Trip> less(PileDraft.Trip trip, int pull, int place) {
    List<Integer> left = less(trip.pulls(), pull);
    if (left.size() == trip.pulls().size()) {
      return Optional.of(trip);
    }
    return left.isEmpty() ? Optional.empty() : trips.trip(left, place);
  }

  private static List<Integer> less(Collection<Integer> pulls, int pull) {
    return pulls.stream().filter(p -> p != pull).toList();
  }
}
