package skidway.shakeout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import skidway.rules.Setting;
import skidway.site.Point;
import skidway.staging.Lifts;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;

/** Works out what the machine can bring of a bundle to a pile, in how many trips. */
final class Trips {
  private final Timbers timbers;
  private final Room room;
  private final Lifts lifts;

  /** What a lift from a bundle's spot to a place takes, by their names; negative if it cannot. */
  private final Map<String, Long> leastMs = new HashMap<>();

  /** Most trips in one wave. */
  final int most;

  Trips(Timbers timbers, Room room) {
    this.timbers = timbers;
    this.room = room;
    lifts = new Lifts(timbers.task);
    most = (int) timbers.task.settings().get(Setting.MACHINE_TRIPS);
  }

  /** The lift of some pieces of one bundle to a place, if the machine can do it in one. */
  Optional<PileDraft.Trip> trip(List<Integer> pulls, int place) {
    double massKg = pulls.stream().mapToDouble(i -> timbers.piece(i).mass().highKg()).sum();
    Point from = timbers.spot(pulls.get(0)).footprint().centre();
    Point to = room.places.get(place).footprint().centre();
    String bundleId = timbers.bundle(pulls.get(0)).id();
    return lifts
        .move(load(pulls), massKg, from, to)
        .map(lift -> new PileDraft.Trip(bundleId, pulls, massKg, lift));
  }

  /** What a trip with one piece takes at least; none if the machine cannot make it. */
  OptionalLong leastMs(int pull, int place) {
    long ms =
        leastMs.computeIfAbsent(
            timbers.bundle(pull).id() + " " + place,
            key ->
                trip(List.of(pull), place)
                    .map(trip -> timbers.time.liftMs(trip.lift().driveM()))
                    .orElse(-1L));
    return ms < 0 ? OptionalLong.empty() : OptionalLong.of(ms);
  }

  /**
   * As few trips as halving finds; empty if some piece is too heavy, or they are more than allowed.
   */
  List<PileDraft.Trip> trips(List<Integer> pulls, int place, int allowed) {
    if (allowed < 1) {
      return List.of();
    }
    Optional<PileDraft.Trip> one = trip(pulls, place);
    if (one.isPresent()) {
      return List.of(one.get());
    }
    if (pulls.size() == 1) {
      return List.of();
    }
    int half = pulls.size() / 2;
    List<PileDraft.Trip> first = trips(pulls.subList(0, half), place, allowed - 1);
    List<PileDraft.Trip> second =
        trips(pulls.subList(half, pulls.size()), place, allowed - first.size());
    if (first.isEmpty() || second.isEmpty()) {
      return List.of();
    }
    List<PileDraft.Trip> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }

  /** The pieces as a bundle, as long as the longest and as wide as the bundle they come from. */
  private Bundle load(List<Integer> pulls) {
    Bundle own = timbers.bundle(pulls.get(0));
    double longestM = pulls.stream().mapToDouble(i -> timbers.piece(i).lengthM()).max().orElse(0);
    List<PackedPiece> packed =
        pulls.stream().map(i -> new PackedPiece(timbers.piece(i), 1)).toList();
    return new Bundle(
        own.id(),
        own.loadId(),
        own.offOrder(),
        longestM,
        own.widthM(),
        own.heightM(),
        OptionalDouble.empty(),
        packed);
  }
}
