package skidway.staging;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import skidway.erection.PullOrder;
import skidway.geometry.Walker;
import skidway.geometry.WalkingDistances;
import skidway.plan.Presence;
import skidway.plan.Task;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.TruckStand;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/**
 * Prices taking bundles off by hand, where no machine unloads: people carry every timber from the
 * nearer long side of its truck to the open side of its spot, lay it there and walk back. They walk
 * past the walls that have risen by the time the load comes.
 *
 * <p>What it takes to hand a timber down from the bed is within the time of laying it.
 */
final class HandUnloading {
  /** On a site with a machine nobody walks from the truck. */
  static final HandUnloading NEVER = new HandUnloading(Map.of());

  /** Metres by bundle, then by spot; infinite where nobody gets through. */
  private final Map<String, double[]> metres;

  private record Arrival(String truckStandId, int pulledBefore) {}

  private HandUnloading(Map<String, double[]> metres) {
    this.metres = metres;
  }

  static HandUnloading of(
      Task task, List<Spot> spots, Walker walker, PullOrder order, Presence presence) {
    if (!task.site().byHand()) {
      return NEVER;
    }
    List<Point> accesses = spots.stream().map(Spot::access).toList();
    Map<Arrival, double[]> walks = new HashMap<>();
    Map<String, double[]> metres = new HashMap<>();
    for (Bundle bundle : task.delivery().bundles()) {
      String stand = task.delivery().load(bundle.loadId()).orElseThrow().truckStandId();
      Arrival arrival = new Arrival(stand, presence.pulledBefore(presence.comes(bundle)));
      metres.put(
          bundle.id(),
          walks.computeIfAbsent(arrival, a -> walks(task.site(), walker, a, accesses, order)));
    }
    return new HandUnloading(metres);
  }

  private static double[] walks(
      Site site, Walker walker, Arrival arrival, List<Point> accesses, PullOrder order) {
    TruckStand truck = site.truckStand(arrival.truckStandId()).orElseThrow();
    double[] nearer = new double[accesses.size()];
    Arrays.fill(nearer, Double.POSITIVE_INFINITY);
    double[][] fromSides =
        WalkingDistances.between(
            site, walker, truck.sides(), accesses, order, arrival.pulledBefore());
    for (double[] fromSide : fromSides) {
      Arrays.setAll(nearer, s -> Math.min(nearer[s], fromSide[s]));
    }
    return nearer;
  }

  /** Whether people get from the bundle's truck to a spot. */
  boolean reaches(Bundle bundle, int spot) {
    return Double.isFinite(metres(bundle, spot));
  }

  /**
   * Person-milliseconds of carrying a bundle's timbers to a spot and laying them in a stack;
   * standing them up in a rack is priced elsewhere.
   */
  long workMs(Bundle bundle, int spot, boolean rack, CrewTime time) {
    long sum = rack ? 0 : time.pileMs() + time.layMs(bundle.pieces().size());
    for (Piece piece : bundle.pieces()) {
      sum += time.carryMs(time.carriers(piece), metres(bundle, spot));
    }
    return sum;
  }

  private double metres(Bundle bundle, int spot) {
    double[] walks = metres.get(bundle.id());
    if (walks == null) {
      throw new IllegalArgumentException("Nobody carries " + bundle.id() + " off a truck.");
    }
    return walks[spot];
  }
}
