package skidway.geometry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import skidway.erection.Placement;
import skidway.site.Point;
import skidway.site.Site;

/**
 * Measures the shortest walk between two points of the site while certain walls stand too high to
 * step over.
 *
 * <p>A person is a point who keeps inside the site's boundary and walks round keep-clears that are
 * not walkable, floor openings and risen walls, but through doors. Decks higher than a step are
 * walked onto and off over their steps only; decks of one height that touch are one. Steps count
 * their length and their height times the climb factor. Walks may touch obstacles; they bend at
 * obstacles' corners only, which makes the visibility graph of those corners exact, to a tenth of a
 * millimetre. A walk that does not exist is infinitely long.
 *
 * <p>Not for use by several threads at once.
 *
 * @see WalkingDistances for all walks of a pull order
 */
public final class WalkingMap {
  /** Few enough that what is known of them stays small. */
  private static final int PLACES_AT_ONCE = 64;

  private final Terrain terrain;
  private final WalkingGraph graph;

  WalkingMap(Terrain terrain, Set<String> risenWalls) {
    this.terrain = terrain;
    graph = new WalkingGraph(terrain, risenWalls);
  }

  /**
   * Prepares the map.
   *
   * @param risenWalls ids of the walls that stand too high to step over
   */
  public static WalkingMap of(Site site, Set<String> risenWalls, Walker walker) {
    return new WalkingMap(new Terrain(site, walker), risenWalls);
  }

  /** Length of the shortest walk, climbs counted. */
  public double metres(Point from, Point to) {
    Stop start = graph.stop(new ViewPoint(from));
    Stop end = graph.stop(new ViewPoint(to));
    return graph.metres(start, end, graph.metresFrom(end));
  }

  /**
   * Lengths of the shortest walks to where the pieces' places are reached from, on whichever side
   * of the wall that is nearer.
   *
   * @return by index of the start, then by index of the piece
   */
  public double[][] metres(List<Point> from, List<Placement> to) {
    double[][] metres = new double[from.size()][to.size()];
    measure(from.stream().map(ViewPoint::new).toList(), to, metres, 0);
    return metres;
  }

  /** Lengths of the shortest walks from each start to each end. */
  double[][] metresBetween(List<Point> from, List<Point> to) {
    List<Stop> ends = to.stream().map(end -> graph.stop(new ViewPoint(end))).toList();
    double[][] metres = new double[from.size()][to.size()];
    for (int i = 0; i < from.size(); i++) {
      Stop source = graph.stop(new ViewPoint(from.get(i)));
      double[] toSource = graph.metresFrom(source);
      for (int j = 0; j < to.size(); j++) {
        metres[i][j] = graph.metres(ends.get(j), source, toSource);
      }
    }
    return metres;
  }

  /**
   * The same for some neighbouring columns of a larger table.
   *
   * @param column where the first piece goes
   */
  void measure(List<ViewPoint> from, List<Placement> to, double[][] metres, int column) {
    List<Stop> starts = from.stream().map(graph::stop).toList();
    Map<List<StandingPoint>, Integer> columns = new LinkedHashMap<>();
    int[] sameAs = new int[to.size()];
    for (int piece = 0; piece < to.size(); piece++) {
      List<StandingPoint> points =
          StandingPoint.of(terrain.site(), to.get(piece), terrain.walker(), graph::isWalkable);
      columns.putIfAbsent(points, column + piece);
      sameAs[piece] = columns.get(points);
    }
    List<Map.Entry<List<StandingPoint>, Integer>> places = List.copyOf(columns.entrySet());
    for (int first = 0; first < places.size(); first += PLACES_AT_ONCE) {
      int last = Math.min(first + PLACES_AT_ONCE, places.size());
      measure(starts, places.subList(first, last), metres);
    }
    copy(metres, column, sameAs);
  }

  private void measure(
      List<Stop> starts, List<Map.Entry<List<StandingPoint>, Integer>> places, double[][] metres) {
    List<Goal> goals = places.stream().map(place -> new Goal(graph, place.getKey())).toList();
    int[] columns = places.stream().mapToInt(Map.Entry::getValue).toArray();
    // Every start has its own row, so that all cores may work at once.
    IntStream.range(0, starts.size())
        .parallel()
        .forEach(
            i -> {
              Stop start = starts.get(i);
              for (int k = 0; k < columns.length; k++) {
                metres[i][columns[k]] = goals.get(k).metres(start);
              }
            });
  }

  /** A piece of another course at the same place is as far away. */
  private static void copy(double[][] metres, int column, int[] sameAs) {
    for (double[] row : metres) {
      for (int piece = 0; piece < sameAs.length; piece++) {
        row[column + piece] = row[sameAs[piece]];
      }
    }
  }
}
