package skidway.shakeout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import skidway.timber.Piece;
import skidway.timber.Section;

/** What one more pile could save a wave: timbers of one section for each place that is free. */
final class Prospects {
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
  private final PileRules rules;
  private final WaveDraft draft;
  private final int tripsLeft;

  /** Those that may save most first. */
  private final List<Prospect> all = new ArrayList<>();

  /**
   * @param draft the wave as it is
   * @param mayCome pieces that it may bring
   */
  Prospects(
      Timbers timbers,
      Room room,
      Pricing pricing,
      Trips trips,
      PileRules rules,
      WaveDraft draft,
      List<Integer> mayCome) {
    this.timbers = timbers;
    this.room = room;
    this.pricing = pricing;
    this.trips = trips;
    this.rules = rules;
    this.draft = draft;
    tripsLeft = trips.most - draft.trips();
    boolean[] brought = PileDraft.hold(draft.piles(), draft.from(), draft.to());
    Aside aside = new Aside(timbers, draft.from(), brought);
    List<Integer> open = mayCome.stream().filter(i -> !brought[i - draft.from()]).toList();
    for (int place = 0; place < room.places.size(); place++) {
      if (rules.heightM(place) > 0 && isFree(place, draft.piles())) {
        all.addAll(onPlace(place, open, aside));
      }
    }
    all.sort(Comparator.comparingLong(Prospect::mostMs).reversed());
  }

  /** The wave's piles and room for a few more, none in the way of another. */
  List<PileDraft> begun() {
    List<PileDraft> piles = new ArrayList<>(draft.piles());
    for (Prospect prospect : all) {
      if (piles.size() < draft.piles().size() + EMPTY_PILES && isFree(prospect.place, piles)) {
        piles.add(new PileDraft(prospect.place, List.of(), List.of()));
      }
    }
    return piles;
  }

  /** A pile for each of the most promising, filled as well as can be. */
  List<PileDraft> filled() {
    return all.stream().limit(PLACES_FILLED).map(this::filled).flatMap(Optional::stream).toList();
  }

  private boolean isFree(int place, List<PileDraft> piles) {
    return piles.stream().noneMatch(pile -> room.clash(place, pile.place()));
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

  private List<Prospect> onPlace(int place, List<Integer> open, Aside aside) {
    double[][] bringM = room.bringM(draft.from());
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
    bySection.values().forEach(savings -> all.add(prospect(place, savings)));
    return all.stream().filter(prospect -> prospect.mostMs > 0).toList();
  }

  private Prospect prospect(int place, List<Saving> savings) {
    List<String> lots = tripsLeft > 0 ? lots(place, savings) : List.of();
    long mostMs =
        savings.stream()
            .mapToLong(s -> Math.max(0, s.ms(lots.contains(timbers.bundle(s.pull).id()))))
            .sum();
    return new Prospect(place, savings, lots, mostMs);
  }

  /** Bundles of which a trip saves more than it takes, those that save most first. */
  private List<String> lots(int place, List<Saving> savings) {
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

  private Optional<PileDraft> filled(Prospect prospect) {
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
            perLayer,
            rules.overhangM(),
            (people, layer) -> pricing.pilePickMs(like, people, layer));
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
    return Optional.of(new PileDraft(prospect.place, pulls, tripsOf(prospect, pulls)));
  }

  private long saved(Prospect prospect, Saving s) {
    return s.ms(prospect.lots.contains(timbers.bundle(s.pull).id()));
  }

  private PileFill.Timber timber(Saving s, long gainMs) {
    return new PileFill.Timber(
        s.pull, timbers.piece(s.pull).lengthM(), timbers.people[s.pull], gainMs);
  }

  /** The trips that pay, of what went into the pile. */
  private List<PileDraft.Trip> tripsOf(Prospect prospect, List<Integer> pulls) {
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
}
