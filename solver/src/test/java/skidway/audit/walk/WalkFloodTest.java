package skidway.audit.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import skidway.site.Outline;
import skidway.site.Point;

/** The flood leaves out moves that no shortest way makes; here it is held to a way of all moves. */
final class WalkFloodTest {
  private static final int LEVELS = 2;

  @Property(seed = "20310617", tries = 300)
  void everyCellIsAsFarAsByAllMoves(
      @ForAll int seed,
      @ForAll @IntRange(min = 5, max = 40) int across,
      @ForAll @IntRange(min = 0, max = 60) int obstacles,
      @ForAll @IntRange(min = 0, max = 3) int stairs) {
    Random random = new Random(seed);
    WalkGrid grid =
        new WalkGrid(
            new Outline(
                List.of(
                    new Point(0, 0),
                    new Point(across, 0),
                    new Point(across, 20),
                    new Point(0, 20))),
            1);
    byte[] closed = new byte[grid.size()];
    for (int cell = 0; cell < closed.length; cell++) {
      int column = cell % grid.columns();
      int row = cell / grid.columns();
      boolean rim = column == 0 || column == grid.columns() - 1 || row == 0 || row == 21;
      closed[cell] = (byte) (rim ? 1 : 0);
    }
    for (int i = 0; i < obstacles; i++) {
      closed[random.nextInt(closed.length)] = 1;
    }
    byte[] level = new byte[grid.size()];
    int deck = random.nextInt(level.length);
    Arrays.fill(level, deck, Math.min(level.length, deck + 150), (byte) (LEVELS - 1));
    Moves moves = new Moves(grid.columns());
    int[] allowed = moves.allowed(grid, closed, level);
    List<Climb> climbs =
        random
            .ints(stairs, 0, grid.size())
            .mapToObj(foot -> new Climb(foot, random.nextInt(allowed.length), random.nextInt(200)))
            .filter(climb -> closed[climb.foot()] == 0 && closed[climb.top()] == 0)
            .toList();
    int from = random.nextInt(allowed.length);
    int off = random.nextInt(30);

    assertThat(flooded(moves, allowed, climbs, from, off))
        .isEqualTo(byAllMoves(moves, allowed, climbs, from, off));
  }

  private static double[] flooded(
      Moves moves, int[] allowed, List<Climb> climbs, int from, int off) {
    Goals goals = new Goals(1, allowed.length);
    for (int cell = 0; cell < allowed.length; cell++) {
      goals.add(cell, cell, 0, 0);
    }
    WalkFlood flood = new WalkFlood(moves, allowed, climbs);
    flood.begin(from, off);
    flood.spread(goals);
    return goals.nearestM();
  }

  /** Goes over all cells until none gets nearer. */
  private static double[] byAllMoves(
      Moves moves, int[] allowed, List<Climb> climbs, int from, int off) {
    double[] distances = new double[allowed.length];
    Arrays.fill(distances, Double.POSITIVE_INFINITY);
    distances[from] = off;
    boolean more = true;
    while (more) {
      double[] before = distances.clone();
      for (int cell = 0; cell < allowed.length; cell++) {
        for (int move = 0; move < Moves.COUNT; move++) {
          if ((allowed[cell] >> move & 1) != 0) {
            int to = cell + moves.offset(move);
            distances[to] = Math.min(distances[to], distances[cell] + moves.length(move));
          }
        }
      }
      for (Climb climb : climbs) {
        distances[climb.top()] =
            Math.min(distances[climb.top()], distances[climb.foot()] + climb.length());
        distances[climb.foot()] =
            Math.min(distances[climb.foot()], distances[climb.top()] + climb.length());
      }
      more = !Arrays.equals(before, distances);
    }
    return distances;
  }
}
