package skidway.geometry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.alg.interfaces.ShortestPathAlgorithm.SingleSourcePaths;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import skidway.site.Deck;
import skidway.site.Point;
import skidway.site.Steps;

/**
 * Joins the bends of all walkable areas, and the feet and tops of steps, to the graph in which
 * shortest walks are found. Nodes are numbered: the bends of the first area, of the second, …, then
 * foot and top of each steps.
 */
final class WalkingGraph {
  private static final Integer VISITOR = -1;

  private final List<Level> levels;
  private final Map<Level, List<FreeArea>> areas = new LinkedHashMap<>();
  private final Map<FreeArea, Integer> firstNode = new LinkedHashMap<>();
  private final List<Stop> stepEnds = new ArrayList<>();
  private final int firstStepEnd;
  private final Graph<Integer, DefaultWeightedEdge> graph =
      new SimpleWeightedGraph<>(DefaultWeightedEdge.class);

  WalkingGraph(Terrain terrain, Set<String> risenWalls) {
    levels = terrain.levels();
    List<Geometry> walls = terrain.walls(risenWalls);
    int nodes = 0;
    for (Level level : levels) {
      List<FreeArea> free = terrain.free(level, walls);
      areas.put(level, free);
      for (FreeArea area : free) {
        firstNode.put(area, nodes);
        nodes += addArea(area, nodes);
      }
    }
    firstStepEnd = nodes;
    Geometry closed = Grid.union(walls);
    for (Deck deck : terrain.site().decks()) {
      for (Steps steps : deck.steps()) {
        addSteps(deck, steps, closed, terrain.walker());
      }
    }
  }

  private int addArea(FreeArea area, int first) {
    int count = area.bends().length;
    for (int i = 0; i < count; i++) {
      graph.addVertex(first + i);
    }
    for (SightLine line : area.sightLines()) {
      Graphs.addEdge(graph, first + line.from(), first + line.to(), line.metres());
    }
    return count;
  }

  /** Leaves out steps that lead nowhere or that a risen wall closes. */
  private void addSteps(Deck deck, Steps steps, Geometry walls, Walker walker) {
    Level upper = levels.stream().filter(l -> isOf(l, deck)).findFirst().orElse(null);
    Level lower = upper == null ? null : levelOfFoot(steps.foot(), upper);
    if (upper == null || lower == null) {
      return;
    }
    Stop foot = stop(new ViewPoint(steps.foot()), lower);
    Stop top = stop(new ViewPoint(steps.top()), upper);
    boolean closed = Grid.line(steps.foot(), steps.top()).relate(walls, "T********");
    if (closed || !foot.isWalkable() || !top.isWalkable()) {
      return;
    }
    double climbM = Math.abs(upper.heightM() - lower.heightM());
    double metres = foot.view().metresTo(top.view()) + walker.climbFactor() * climbM;
    Graphs.addEdge(graph, addStepEnd(foot), addStepEnd(top), metres);
  }

  private static boolean isOf(Level level, Deck deck) {
    return !level.isGround() && Grid.of(level.heightM()) == Grid.of(deck.heightM());
  }

  /** The ground, unless the foot stands on a deck lower than the one above. */
  private @Nullable Level levelOfFoot(Point foot, Level upper) {
    Level ground = levels.get(levels.size() - 1);
    if (ground.holds(foot)) {
      return ground;
    }
    return levels.stream().filter(l -> l != upper && l.holds(foot)).findFirst().orElse(null);
  }

  private int addStepEnd(Stop end) {
    int node = firstStepEnd + stepEnds.size();
    graph.addVertex(node);
    stepEnds.add(end);
    join(node, end.nodes());
    return node;
  }

  private void join(Integer node, Sights seen) {
    for (int i = 0; i < seen.count(); i++) {
      Graphs.addEdge(graph, node, seen.number(i), seen.metres(i));
    }
  }

  /** Whether somebody can stand on a point. */
  boolean isWalkable(Point point) {
    ViewPoint view = new ViewPoint(point);
    return levels.stream()
        .filter(level -> level.holds(point))
        .findFirst()
        .filter(level -> areas.getOrDefault(level, List.of()).stream().anyMatch(view::isIn))
        .isPresent();
  }

  /** Finds the area a point lies in and what it sees from there. */
  Stop stop(ViewPoint view) {
    for (Level level : levels) {
      if (level.holds(view.at())) {
        return stop(view, level);
      }
    }
    return Stop.nowhere(view);
  }

  private Stop stop(ViewPoint view, Level level) {
    for (FreeArea area : areas.getOrDefault(level, List.of())) {
      if (view.isIn(area)) {
        return stop(view, area);
      }
    }
    return Stop.nowhere(view);
  }

  private Stop stop(ViewPoint view, FreeArea area) {
    Sights bends = view.sights(area);
    Sights nodes = new Sights(bends.count() + stepEnds.size());
    int first = firstNode.getOrDefault(area, 0);
    for (int i = 0; i < bends.count(); i++) {
      nodes.add(first + bends.number(i), bends.metres(i));
    }
    for (int i = 0; i < stepEnds.size(); i++) {
      Stop end = stepEnds.get(i);
      if (end.area() == area && view.sees(end.view(), area)) {
        nodes.add(firstStepEnd + i, view.metresTo(end.view()));
      }
    }
    return new Stop(view, area, nodes);
  }

  /** Lengths of the shortest walks from a stop to all nodes. */
  double[] metresFrom(Stop stop) {
    double[] metres = new double[firstStepEnd + stepEnds.size()];
    graph.addVertex(VISITOR);
    join(VISITOR, stop.nodes());
    SingleSourcePaths<Integer, DefaultWeightedEdge> paths =
        new DijkstraShortestPath<>(graph).getPaths(VISITOR);
    for (int node = 0; node < metres.length; node++) {
      metres[node] = paths.getWeight(node);
    }
    graph.removeVertex(VISITOR);
    return metres;
  }

  /**
   * Length of the shortest walk between two stops.
   *
   * @param toEnd what {@link #metresFrom} says of the end
   */
  double metres(Stop start, Stop end, double[] toEnd) {
    FreeArea area = start.area();
    if (area == null || !end.isWalkable()) {
      return Double.POSITIVE_INFINITY;
    }
    if (area == end.area() && start.view().sees(end.view(), area)) {
      return start.view().metresTo(end.view());
    }
    double best = Double.POSITIVE_INFINITY;
    Sights seen = start.nodes();
    for (int i = 0; i < seen.count(); i++) {
      best = Math.min(best, seen.metres(i) + toEnd[seen.number(i)]);
    }
    return best;
  }
}
