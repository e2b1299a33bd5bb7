package skidway.staging;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import skidway.erection.PullOrder;
import skidway.limits.AreaLoad;
import skidway.limits.RackRoom;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/**
 * The problem in arrays, as the search reads it: bundle and spot numbers instead of objects, every
 * price and refusal of a bundle on a spot worked out once. Never changes after it is built.
 */
final class Board {
  /** Price of a bundle on a spot where a rule keeps it off. */
  static final long REFUSED = -1;

  final Task task;
  final List<Bundle> bundles;
  final List<Spot> spots;

  /** Pull indexes of each bundle's pieces, growing. */
  final int[][] pulls;

  /** People who carry each piece, in the order of {@link #pulls}. */
  private final int[][] carriers;

  /** Mass of each bundle, kg. */
  final double[] massKg;

  /** Person-milliseconds of carry and machine (and racking) of a bundle on a spot, or REFUSED. */
  final long[][] placeMs;

  /** The carry within {@link #placeMs}. */
  final long[][] carryMs;

  /** The racking within {@link #placeMs}, per bundle; 0 on stacks. */
  final long[] rackMs;

  /** Walking distance by spot and pull index, metres. */
  final double[][] metres;

  /** Spots that may not be used together with a spot. */
  final int[][] excludes;

  private final BitSet[] excludesBit;

  /** The spots open to each bundle, cheapest first. */
  final int[][] near;

  final boolean[] rack;
  final double[] allowedKpa;
  final double[] massLimitKg;
  final double[] rackFloorM2;

  /** Most that the floor under a rack carries, kg. */
  final double[] rackMassKg;

  /** Floor the bundle's pieces take on end, m². */
  final double[] onEndM2;

  final double bearerM;
  final double stackHeightM;
  final CrewTime time;
  final Lifts lifts;

  /**
   * @param spots candidates, all of them legal places
   * @param excludes for each spot the numbers of those it excludes
   * @param metres walking distance by spot and pull index; infinite where there is no way
   */
  Board(Task task, List<Spot> spots, int[][] excludes, double[][] metres, PullOrder order) {
    this.task = task;
    this.bundles = task.delivery().bundles();
    this.spots = List.copyOf(spots);
    this.excludes = excludes;
    this.metres = metres;
    this.excludesBit = new BitSet[excludes.length];
    for (int s = 0; s < excludes.length; s++) {
      excludesBit[s] = new BitSet(excludes.length);
      for (int other : excludes[s]) {
        excludesBit[s].set(other);
      }
    }
    this.time = new CrewTime(task.settings());
    this.lifts = new Lifts(task);
    this.bearerM = task.settings().get(Setting.BEARER_HEIGHT);
    this.stackHeightM = task.settings().get(Setting.STACK_HEIGHT);
    int n = bundles.size();
    int m = spots.size();
    pulls = new int[n][];
    carriers = new int[n][];
    massKg = new double[n];
    onEndM2 = new double[n];
    rackMs = new long[n];
    for (int b = 0; b < n; b++) {
      List<Piece> pieces = bundles.get(b).pieces();
      pulls[b] = pieces.stream().mapToInt(order::indexOf).sorted().toArray();
      carriers[b] = new int[pulls[b].length];
      for (int i = 0; i < pulls[b].length; i++) {
        carriers[b][i] = time.carriers(order.placements().get(pulls[b][i]).piece());
      }
      massKg[b] = bundles.get(b).massKg();
      onEndM2[b] = RackRoom.floorM2(bundles.get(b));
      rackMs[b] = time.rackMs(pieces.size());
    }
    rack = new boolean[m];
    allowedKpa = new double[m];
    massLimitKg = new double[m];
    rackFloorM2 = new double[m];
    rackMassKg = new double[m];
    for (int s = 0; s < m; s++) {
      Spot spot = spots.get(s);
      rack[s] = spot.kind() == SpotKind.RACK;
      allowedKpa[s] = task.site().zone(spot.zoneId()).orElseThrow().allowedKpa();
      massLimitKg[s] = spot.massLimitKg().orElse(Double.POSITIVE_INFINITY);
      rackMassKg[s] = AreaLoad.massKg(allowedKpa[s], spot.footprint().areaM2());
      rackFloorM2[s] = spot.footprint().areaM2() * task.settings().get(Setting.RACK_PACKING);
    }
    carryMs = new long[n][m];
    placeMs = new long[n][m];
    BundleFit fit = new BundleFit(task, lifts);
    for (int b = 0; b < n; b++) {
      for (int s = 0; s < m; s++) {
        price(b, s, metres[s], fit);
      }
    }
    near = new int[n][];
    for (int b = 0; b < n; b++) {
      near[b] = nearest(placeMs[b]);
    }
  }

  private void price(int b, int s, double[] metres, BundleFit fit) {
    Bundle bundle = bundles.get(b);
    Spot spot = spots.get(s);
    placeMs[b][s] = REFUSED;
    if (!fit.refusals(bundle, massKg[b], spot).isEmpty()) {
      return;
    }
    long carry = 0;
    for (int i = 0; i < pulls[b].length; i++) {
      double way = metres[pulls[b][i]];
      if (Double.isInfinite(way)) {
        return;
      }
      carry += time.carryMs(carriers[b][i], way);
    }
    carryMs[b][s] = carry;
    Lifts.Lift lift = lifts.offTruck(bundle, massKg[b], spot.footprint().centre()).orElseThrow();
    placeMs[b][s] = carry + time.liftMs(lift.driveM()) + (rack[s] ? rackMs[b] : 0);
  }

  private static int[] nearest(long[] prices) {
    List<Integer> open = new ArrayList<>();
    IntStream.range(0, prices.length).filter(s -> prices[s] != REFUSED).forEach(open::add);
    open.sort(Comparator.comparingLong((Integer s) -> prices[s]).thenComparing(s -> s));
    return open.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Whether two spots may not be used together. */
  boolean exclude(int spot, int other) {
    return excludesBit[spot].get(other);
  }

  /** Whether people find no way from a spot to all places of a bundle's pieces. */
  boolean hasNoWay(int bundle, int spot) {
    for (int pull : pulls[bundle]) {
      if (Double.isInfinite(metres[spot][pull])) {
        return true;
      }
    }
    return false;
  }

  int bundleCount() {
    return bundles.size();
  }

  int spotCount() {
    return spots.size();
  }
}
