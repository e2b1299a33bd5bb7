package skidway.geometry;

import java.util.List;

/**
 * A piece's place as somebody walks there: the points on one or both sides of its wall from which
 * it is laid. None where nobody can stand on either side.
 */
final class Goal {
  /** A point to lay a piece from. */
  private static final class Side {
    private final Stop end;

    /** Walk that counts besides the way there. */
    private final double extraM;

    /** Lengths of the shortest walks from all nodes of the graph. */
    private final double[] fromNodes;

    Side(WalkingGraph graph, StandingPoint point) {
      end = graph.stop(new ViewPoint(point.at()));
      extraM = point.extraM();
      fromNodes = graph.metresFrom(end);
    }

    /** The walk is no shorter than this. */
    double leastM(Stop start) {
      return start.view().metresTo(end.view()) + extraM;
    }

    double metres(WalkingGraph graph, Stop start) {
      return graph.metres(start, end, fromNodes) + extraM;
    }
  }

  private final WalkingGraph graph;
  private final Side[] sides;

  Goal(WalkingGraph graph, List<StandingPoint> points) {
    this.graph = graph;
    sides = points.stream().map(point -> new Side(graph, point)).toArray(Side[]::new);
  }

  /** Length of the shortest walk to whichever side is nearer. */
  double metres(Stop start) {
    return switch (sides.length) {
      case 0 -> Double.POSITIVE_INFINITY;
      case 1 -> sides[0].metres(graph, start);
      default -> {
        double insideM = sides[0].leastM(start);
        double outsideM = sides[1].leastM(start);
        yield insideM <= outsideM
            ? shorter(start, sides[0], sides[1], outsideM)
            : shorter(start, sides[1], sides[0], insideM);
      }
    };
  }

  /**
   * The side that would be nearer if nothing stood in the way mostly is, so the other is measured
   * only if it may be.
   */
  private double shorter(Stop start, Side near, Side far, double farLeastM) {
    double metres = near.metres(graph, start);
    return farLeastM < metres ? Math.min(metres, far.metres(graph, start)) : metres;
  }
}
