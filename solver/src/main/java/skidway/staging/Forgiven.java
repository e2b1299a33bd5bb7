package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Rules that stacks together broke before anything was planned. Each is forgiven as long as it is
 * left as it was and gets no worse: two stacks too near each other while both still stand there, a
 * floor while no more lies on it. Mending one of them is no leave to break another.
 */
final class Forgiven {
  /** A limit may be overtaken by this much more, for want of exact figures. */
  private static final double SLACK = 1e-6;

  static final Forgiven NOTHING = new Forgiven();

  /** Two spots too near each other, when a moment begins. */
  private record Pair(int spot, int other, int moment) {}

  /** Spots that together shut a path, when a moment begins. */
  private record Shut(List<Integer> spots, int moment) {}

  private final List<Pair> pairs = new ArrayList<>();
  private final List<Shut> shut = new ArrayList<>();

  /** By moment: what is taken of each limit that is broken. */
  private final List<Map<Integer, Double>> overtaken = new ArrayList<>();

  private Forgiven() {}

  /**
   * What is broken now.
   *
   * @param start holds what lies there from the start and nothing else
   */
  static Forgiven of(Occupancy start) {
    Forgiven forgiven = new Forgiven();
    Board board = start.board;
    for (int moment = 0; moment < board.moments; moment++) {
      for (int spot = 0; spot < board.spotCount(); spot++) {
        for (int other : board.excludes[spot]) {
          if (spot < other && start.count(spot, moment) > 0 && start.count(other, moment) > 0) {
            forgiven.pairs.add(new Pair(spot, other, moment));
          }
        }
      }
      for (int[] spots : start.shut(moment)) {
        forgiven.shut.add(new Shut(IntStream.of(spots).boxed().toList(), moment));
      }
      forgiven.overtaken.add(start.overtaken(moment));
    }
    return forgiven;
  }

  boolean isNothing() {
    return pairs.isEmpty() && shut.isEmpty() && overtaken.stream().allMatch(Map::isEmpty);
  }

  /** Whether all that stacks together break is forgiven. */
  boolean covers(Occupancy now) {
    return now.conflicts() == pairsLeft(now) && now.shutPaths() == shutLeft(now) && borne(now);
  }

  private long pairsLeft(Occupancy now) {
    return pairs.stream()
        .filter(pair -> stands(now, pair.spot(), pair.moment()))
        .filter(pair -> stands(now, pair.other(), pair.moment()))
        .count();
  }

  private long shutLeft(Occupancy now) {
    return shut.stream()
        .filter(path -> path.spots().stream().allMatch(s -> stands(now, s, path.moment())))
        .count();
  }

  private boolean borne(Occupancy now) {
    for (int moment = 0; moment < overtaken.size(); moment++) {
      Map<Integer, Double> before = overtaken.get(moment);
      for (Map.Entry<Integer, Double> limit : now.overtaken(moment).entrySet()) {
        if (limit.getValue() > before.getOrDefault(limit.getKey(), 0.0) + SLACK) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether something is on a spot that was there from the start. */
  private static boolean stands(Occupancy now, int spot, int moment) {
    for (int i = 0; i < now.count(spot); i++) {
      int bundle = now.member(spot, i);
      if (now.board.home[bundle] == spot && now.board.isThere(bundle, moment)) {
        return true;
      }
    }
    return false;
  }
}
