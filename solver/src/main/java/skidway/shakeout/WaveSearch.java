package skidway.shakeout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import skidway.rules.Setting;
import skidway.timber.Piece;
import skidway.timber.Section;

/**
 * Looks for the best piles of one wave: again and again the pile that saves most, filled as well as
 * can be and then made better piece by piece, as long as the whole wave gets cheaper; then takes
 * out every piece that does not pay.
 */
final class WaveSearch {
  /** Places that are filled exactly before the best of them is taken. */
  private static final int PLACES_FILLED = 10;

  /** Piles begun at once with a piece and all that lies over it. */
  private static final int EMPTY_PILES = 4;

  /** Timbers that a fill chooses among. */
  private static final int MOST_TIMBERS = 60;

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

  private IntStream mayCome(int from, int to, int near) {
    return IntStream.range(from, to)
        .filter(i -> mayBeBrought(i, from) && (i < near || isDugBefore(i, near)));
  }

  private WaveDraft withOneMore(WaveDraft draft, List<Integer> mayCome, PileRules rules) {
    boolean[] brought = new boolean[draft.to() - draft.from()];
    draft.piles().forEach(pile -> pile.pulls().forEach(i -> brought[i - draft.from()] = true));
    Aside aside = new Aside(timbers, draft.from(), brought);
    List<Integer> open = mayCome.stream().filter(i -> !brought[i - draft.from()]).toList();
    double[][] bringM = room.bringM(draft.from());
    List<Prospect> prospects = new ArrayList<>();
    for (int place = 0; place < room.places.size(); place++) {
      if (rules.heightM(place) > 0 && isFree(place, draft)) {
        prospects.addAll(prospects(place, open, aside, bringM, trips.most - draft.trips()));
      }
    }
    prospects.sort(Comparator.comparingLong(Prospect::mostMs).reversed());
    WaveDraft begun = improved(draft, withEmpty(draft.piles(), prospects), mayCome, rules);
    WaveDraft best = cheaper(draft, begun);
    for (Prospect prospect : prospects.subList(0, Math.min(PLACES_FILLED, prospects.size()))) {
      Optional<PileDraft> pile = filled(prospect, rules, trips.most - draft.trips());
      if (pile.isPresent()) {
        WaveDraft with = improved(draft, and(draft.piles(), pile.get()), mayCome, rules);
        best = cheaper(best, with);
      }
    }
    return best;
  }

  private static WaveDraft cheaper(WaveDraft one, WaveDraft other) {
    return other.cost().totalMs() < one.cost().totalMs() ? other : one;
  }

  /** Piles and room for a few more, none in the way of another. */
  private List<PileDraft> withEmpty(List<PileDraft> piles, List<Prospect> prospects) {
    List<PileDraft> all = new ArrayList<>(piles);
    for (Prospect prospect : prospects) {
      if (all.size() < piles.size() + EMPTY_PILES
          && all.stream().noneMatch(pile -> room.clash(prospect.place, pile.place()))) {
        all.add(new PileDraft(prospect.place, List.of(), List.of()));
      }
    }
    return all;
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

  private boolean isFree(int place, WaveDraft draft) {
    return draft.piles().stream().noneMatch(pile -> room.clash(place, pile.place()));
  }

  private WaveDraft priced(int from, int to, List<PileDraft> piles) {
    return new WaveDraft(from, to, piles, pricing.cost(from, to, piles));
  }

  private static List<PileDraft> and(List<PileDraft> piles, PileDraft more) {
    List<PileDraft> all = new ArrayList<>(piles);
    all.add(more);
    return all;
  }

  /** What a piece saves on a place, but for picking it from the pile. */
  private record Saving(int pull, long byHandMs, long byMachineMs) {
    long ms(boolean machine) {
      return machine ? Math.max(byHandMs, byMachineMs) : byHandMs;
    }
  }

  /**
   * Timbers of one section that a place could take.
   *
   * @param lots bundles of which the machine brings what it brings cheaper
   * @param mostMs more than this they do not save
   */
  private record Prospect(int place, List<Saving> savings, List<String> lots, long mostMs) {}

  private List<Prospect> prospects(
      int place, List<Integer> open, Aside aside, double[][] bringM, int tripsLeft) {
    Map<Section, List<Saving>> bySection = new LinkedHashMap<>();
    double roomM = room.places.get(place).footprint().lengthM();
    for (int i : open) {
      Piece piece = timbers.piece(i);
      double metres = bringM[timbers.stack[i]][place];
      if (piece.lengthM() <= roomM + 1e-9 && Double.isFinite(metres)) {
        long asideMs = aside.isAside(i) && !aside.isAsideIfBrought(i) ? 1 : 0;
        long savedMs =
            timbers.carryMs[i]
                + asideMs * timbers.time.rehandleMs(1)
                - pricing.fromPileMs(i, place);
        bySection
            .computeIfAbsent(piece.section(), section -> new ArrayList<>())
            .add(
                new Saving(
                    i,
                    savedMs - pricing.bringMs(i, metres) - pricing.layMs(false),
                    savedMs - pricing.layMs(true)));
      }
    }
    List<Prospect> all = new ArrayList<>();
    bySection.values().forEach(savings -> all.add(prospect(place, savings, tripsLeft)));
    return all.stream().filter(prospect -> prospect.mostMs > 0).toList();
  }

  private Prospect prospect(int place, List<Saving> savings, int tripsLeft) {
    List<String> lots = tripsLeft > 0 ? lots(place, savings, tripsLeft) : List.of();
    long mostMs =
        savings.stream()
            .mapToLong(s -> Math.max(0, s.ms(lots.contains(timbers.bundle(s.pull).id()))))
            .sum();
    return new Prospect(place, savings, lots, mostMs);
  }

  /** Bundles of which a trip saves more than it takes, those that save most first. */
  private List<String> lots(int place, List<Saving> savings, int tripsLeft) {
    Map<String, Long> surplusMs = new TreeMap<>();
    Map<String, Integer> first = new TreeMap<>();
    for (Saving s : savings) {
      String id = timbers.bundle(s.pull).id();
      long more = Math.max(0, s.byMachineMs) - Math.max(0, s.byHandMs);
      surplusMs.merge(id, Math.max(0, more), Long::sum);
      first.putIfAbsent(id, s.pull);
    }
    surplusMs.replaceAll(
        (id, ms) -> ms <= 0 ? 0 : ms - trips.leastMs(first.getOrDefault(id, 0), place).orElse(ms));
    return surplusMs.entrySet().stream()
        .filter(lot -> lot.getValue() > 0)
        .sorted(
            Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(tripsLeft)
        .map(Map.Entry::getKey)
        .toList();
  }

  private Optional<PileDraft> filled(Prospect prospect, PileRules rules, int tripsLeft) {
    List<Saving> best =
        prospect.savings.stream()
            .sorted(
                Comparator.comparingLong((Saving s) -> -saved(prospect, s))
                    .thenComparing(Saving::pull))
            .limit(MOST_TIMBERS)
            .toList();
    Piece like = timbers.piece(best.get(0).pull);
    int perLayer = pricing.perLayer(like);
    List<PileFill.Timber> timbersToLay =
        best.stream().map(s -> timber(s, saved(prospect, s))).toList();
    PileFill fill =
        new PileFill(
            perLayer, overhangM, (people, layer) -> pricing.pilePickMs(like, people, layer));
    int most = rules.most(prospect.place, like);
    List<Integer> pulls = List.of();
    while (most > 0) {
      pulls = fill.best(timbersToLay, most).stream().map(PileFill.Timber::pull).toList();
      if (pulls.isEmpty() || rules.bears(prospect.place, pulls)) {
        break;
      }
      most = Math.min(most, pulls.size()) - 1;
    }
    if (most <= 0 || pulls.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new PileDraft(prospect.place, pulls, tripsOf(prospect, pulls, tripsLeft)));
  }

  private long saved(Prospect prospect, Saving s) {
    return s.ms(prospect.lots.contains(timbers.bundle(s.pull).id()));
  }

  private PileFill.Timber timber(Saving s, long gainMs) {
    return new PileFill.Timber(
        s.pull, timbers.piece(s.pull).lengthM(), timbers.people[s.pull], gainMs);
  }

  /** The trips that pay, of what went into the pile. */
  private List<PileDraft.Trip> tripsOf(Prospect prospect, List<Integer> pulls, int tripsLeft) {
    List<PileDraft.Trip> all = new ArrayList<>();
    for (String lot : prospect.lots) {
      List<Saving> gains =
          prospect.savings.stream()
              .filter(s -> pulls.contains(s.pull) && timbers.bundle(s.pull).id().equals(lot))
              .filter(s -> s.byMachineMs > s.byHandMs)
              .toList();
      long gainMs = gains.stream().mapToLong(s -> s.byMachineMs - s.byHandMs).sum();
      List<PileDraft.Trip> some =
          gains.isEmpty()
              ? List.of()
              : trips.trips(
                  gains.stream().map(Saving::pull).toList(),
                  prospect.place,
                  tripsLeft - all.size());
      long costMs = some.stream().mapToLong(t -> timbers.time.liftMs(t.lift().driveM())).sum();
      if (costMs < gainMs) {
        all.addAll(some);
      }
    }
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
