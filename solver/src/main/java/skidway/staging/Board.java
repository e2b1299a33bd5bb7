package skidway.staging;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import skidway.erection.PullOrder;
import skidway.limits.RackRoom;
import skidway.plan.Presence;
import skidway.plan.Stack;
import skidway.plan.Start;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/**
 * The problem in arrays, as the search reads it: bundle and spot numbers instead of objects, every
 * price and refusal of a bundle on a spot worked out once. Never changes after it is built, but for
 * what it remembers of {@link #share}; two searches may remember the same share twice.
 */
final class Board {
  /** Price of a bundle on a spot where a rule keeps it off. */
  static final long REFUSED = -1;

  /**
   * A walk that counts for one that does not exist: what lies there must be priced all the same.
   */
  private static final double NO_WAY_M = 1000;

  /** Their walks fit into a processor's cache together, and so do a bundle's prices on them. */
  private static final int SPOTS_AT_ONCE = 8;

  final Task task;
  final List<Bundle> bundles;
  final List<Spot> spots;

  /** Pull indexes of each bundle's pieces, growing. */
  final int[][] pulls;

  /** What the layers of each bundle have moved aside. */
  final Digging[] digging;

  /** People who carry each piece, in the order of {@link #pulls}. */
  private final int[][] carriers;

  /** Mass of each bundle, kg. */
  final double[] massKg;

  /** What each bundle adds to the height of a stack, its bearers included, m. */
  final double[] tierM;

  /**
   * Person-milliseconds of carry, unloading, and racking or digging in the bundle, of a bundle on a
   * spot; or REFUSED.
   */
  final long[][] placeMs;

  /** The carry within {@link #placeMs}. */
  final long[][] carryMs;

  /** The racking within {@link #placeMs}, per bundle; 0 on stacks. */
  final long[] rackMs;

  /** Moving pieces aside inside a bundle, within {@link #placeMs}; 0 in racks. */
  final long[] insideMs;

  /** Walking distance by spot and pull index, metres. */
  final double[][] metres;

  /** Spots that may not be used together with a spot. */
  final int[][] excludes;

  private final BitSet[] excludesBit;

  /** The spots open to each bundle, cheapest first. */
  final int[][] near;

  final boolean[] rack;

  /** The kind of footing of each spot. */
  final int[] footing;

  final Footings footings;

  /** Most that a stack on new bearers may weigh, kg, by footing and lowest bundle. */
  final double[][] mostKg;

  /** How many times as high as wide a stack may be, by spot. */
  final double[] mostSlender;

  /**
   * How high a stack may be, by spot: less than elsewhere beside a wall that stands already. A rack
   * is as high as its pieces are long, and heeds the wall alone.
   */
  final double[] mostHeightM;

  final SharedLimits shared;

  /** What a stack adds to the shared limits, by spot and size of its lowest bundle. */
  private final SharedLimits.@Nullable Share[][] shares;

  /** How often loads come after something has been pulled, and once more. */
  final int moments;

  /** The moment at which each bundle comes. */
  final int[] comes;

  /** The moments at which each bundle is there, a bit each. */
  final long[] there;

  /** Where each bundle lies from the start, or {@link Occupancy#NOWHERE}. */
  final int[] home;

  /** Its tier there, 1 = bottom. */
  final int[] homeTier;

  /**
   * Most that may lie on a lowest bundle's spot, itself included, on the bearers it lies on, kg.
   */
  private final double[] standsOnKg;

  /** What the stack on a bundle that lies at the bottom adds to the shared limits there. */
  private final SharedLimits.@Nullable Share[] standing;

  /** Whether it must stay there. */
  final boolean[] stays;

  /** Whether its bands are cut or somebody locked it, so that nothing new comes on top. */
  final boolean[] bearsNothingNew;

  /** The order in which bundles come; those that lie there from the start come at once. */
  final int[] turn;

  private final int[] sizeOf;

  private final Picks[] picks;

  /** Where the truck of each bundle stands that comes on one and is lifted off it. */
  private final @Nullable Point[] trucks;

  final double[] massLimitKg;
  final double[] rackFloorM2;

  /** Most that the floor under a rack carries, kg. */
  final double[] rackMassKg;

  /** Floor the bundle's pieces take on end, m². */
  final double[] onEndM2;

  final double bearerM;
  final double endOverhangM;
  final double sideOverhangM;
  private final double stackHeightM;
  private final double[] heightCapM;
  private final PullOrder order;
  private final Presence presence;
  final CrewTime time;
  final Lifts lifts;
  final HandUnloading hands;

  /**
   * @param spots candidates, all of them legal places
   * @param heightCapM for each spot how high its surroundings let a stack be; infinite if they do
   *     not care
   * @param excludes for each spot the numbers of those it excludes
   * @param metres walking distance by spot and pull index; infinite where there is no way
   * @param presence which bundles are on site together
   * @param hands that unload where no machine does
   */
  Board(
      Task task,
      List<Spot> spots,
      double[] heightCapM,
      int[][] excludes,
      double[][] metres,
      PullOrder order,
      Presence presence,
      HandUnloading hands) {
    this.task = task;
    this.bundles = task.delivery().bundles();
    this.spots = List.copyOf(spots);
    this.excludes = excludes;
    this.heightCapM = heightCapM.clone();
    this.order = order;
    this.presence = presence;
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
    this.hands = hands;
    this.bearerM = task.settings().get(Setting.BEARER_HEIGHT);
    this.endOverhangM = task.settings().get(Setting.END_OVERHANG);
    this.sideOverhangM = task.settings().get(Setting.SIDE_OVERHANG);
    this.stackHeightM =
        Math.min(
            task.settings().get(Setting.STACK_HEIGHT),
            task.settings().get(Setting.HAND_PILE_HEIGHT));
    this.footings = new Footings(task);
    this.mostKg = footings.mostKg(bundles);
    this.shared = new SharedLimits(task, footings);
    this.sizeOf = sizes(bundles);
    int n = bundles.size();
    int m = spots.size();
    pulls = new int[n][];
    digging = new Digging[n];
    carriers = new int[n][];
    massKg = new double[n];
    tierM = bundles.stream().mapToDouble(bundle -> bundle.heightM() + bearerM).toArray();
    onEndM2 = new double[n];
    rackMs = new long[n];
    insideMs = new long[n];
    picks = new Picks[n];
    trucks = new Point[n];
    for (int b = 0; b < n; b++) {
      List<Piece> pieces = bundles.get(b).pieces();
      pulls[b] = pieces.stream().mapToInt(order::indexOf).sorted().toArray();
      carriers[b] = new int[pulls[b].length];
      for (int i = 0; i < pulls[b].length; i++) {
        carriers[b][i] = time.carriers(order.placements().get(pulls[b][i]).piece());
      }
      massKg[b] = bundles.get(b).mass().highKg();
      picks[b] = new Picks(task, bundles.get(b), time);
      onEndM2[b] = RackRoom.floorM2(bundles.get(b));
      rackMs[b] = time.rackMs(pieces.size());
      digging[b] = new Digging(task, bundles.get(b), order);
      insideMs[b] = time.rehandleMs(digging[b].inside);
    }
    moments = presence.moments();
    comes = bundles.stream().mapToInt(presence::comes).toArray();
    there = bundles.stream().mapToLong(presence::moments).toArray();
    home = new int[n];
    homeTier = new int[n];
    standsOnKg = new double[n];
    standing = new SharedLimits.Share[n];
    stays = new boolean[n];
    bearsNothingNew = new boolean[n];
    turn = new int[n];
    for (int b = 0; b < n; b++) {
      takeStart(b);
    }
    rack = new boolean[m];
    footing = new int[m];
    mostSlender = new double[m];
    mostHeightM = new double[m];
    shares = new SharedLimits.Share[m][n];
    massLimitKg = new double[m];
    rackFloorM2 = new double[m];
    rackMassKg = new double[m];
    for (int s = 0; s < m; s++) {
      Spot spot = spots.get(s);
      rack[s] = spot.kind() == SpotKind.RACK;
      footing[s] = footings.of(task.site().zone(spot.zoneId()).orElseThrow());
      mostSlender[s] = footings.mostSlender(footing[s]);
      mostHeightM[s] = rack[s] ? heightCapM[s] : Math.min(stackHeightM, heightCapM[s]);
      massLimitKg[s] = spot.massLimitKg().orElse(Double.POSITIVE_INFINITY);
      rackMassKg[s] = footings.mostInRackKg(footing[s], spot);
      rackFloorM2[s] = spot.footprint().areaM2() * task.settings().get(Setting.RACK_PACKING);
    }
    for (int b = 0; b < n; b++) {
      trucks[b] = byHand() || lies(b) ? null : lifts.truckOf(bundles.get(b));
      standsOnKg[b] = homeTier[b] == 1 ? standsOnKg(b) : 0;
      standing[b] = homeTier[b] == 1 ? standing(b) : null;
    }
    carryMs = new long[n][m];
    placeMs = new long[n][m];
    BundleFit fit = new BundleFit(this);
    IntStream.rangeClosed(0, m / SPOTS_AT_ONCE).parallel().forEach(part -> price(part, fit));
    near = new int[n][];
    IntStream.range(0, n).parallel().forEach(b -> near[b] = nearest(placeMs[b]));
  }

  /** The same board as if nothing lay on it but what must stay. */
  Board cleared() {
    Start start = task.start();
    List<Stack> staying =
        start.stacks().stream()
            .map(stack -> new Stack(stack.spot(), stayingOf(stack)))
            .filter(stack -> !stack.bundleIds().isEmpty())
            .toList();
    Start less =
        new Start(
            staying,
            start.bearers(),
            start.marked(),
            start.fixed(),
            start.intended(),
            start.held());
    return new Board(
        task.startingFrom(less), spots, heightCapM, excludes, metres, order, presence, hands);
  }

  private List<String> stayingOf(Stack stack) {
    return stack.bundleIds().stream().filter(task::staysWhereItLies).toList();
  }

  private void takeStart(int b) {
    String id = bundles.get(b).id();
    Optional<Stack> stack = task.start().stackOf(id);
    home[b] = stack.map(there -> numberOf(there.spot().id())).orElse(Occupancy.NOWHERE);
    homeTier[b] = stack.map(there -> there.bundleIds().indexOf(id) + 1).orElse(0);
    stays[b] = task.staysWhereItLies(id);
    bearsNothingNew[b] = task.start().fixed().contains(id);
    turn[b] = stack.isPresent() ? -1 : b;
  }

  /**
   * Where nobody knows the bearers, they bear what lies on them and no more; and not even that if
   * two at the very ends would not.
   */
  private double standsOnKg(int b) {
    Bundle bundle = bundles.get(b);
    BearerRow known = task.start().bearers().get(bundle.id());
    double mostKg = footings.mostKg(footing[home[b]], bundle, known == null ? ends(b) : known);
    double thereKg =
        IntStream.range(0, bundles.size())
            .filter(other -> home[other] == home[b])
            .mapToDouble(other -> massKg[other])
            .sum();
    return known == null ? Math.min(mostKg, thereKg) : mostKg;
  }

  /** Where nobody knows the bearers, two lie at the very ends. */
  private SharedLimits.Share standing(int b) {
    Bundle bundle = bundles.get(b);
    BearerRow row = task.start().bearers().getOrDefault(bundle.id(), ends(b));
    return shared.share(spots.get(home[b]), bundle, row);
  }

  private BearerRow ends(int b) {
    return new BearerRow(2, bundles.get(b).lengthM(), 0, bundles.get(b).widthM());
  }

  /**
   * Most that a stack on a spot may weigh when this bundle is its lowest, kg.
   *
   * @param untouched whether it lies at the bottom from the start and is not lifted, so that it
   *     keeps the bearers it has
   */
  double mostKg(int spot, int lowest, boolean untouched) {
    return untouched ? standsOnKg[lowest] : mostKg[footing[spot]][lowest];
  }

  private int numberOf(String spotId) {
    for (int s = 0; s < spots.size(); s++) {
      if (spots.get(s).id().equals(spotId)) {
        return s;
      }
    }
    throw new IllegalArgumentException("No candidate is called " + spotId + ".");
  }

  /** Prices all bundles on a few spots; all cores may work at once on others. */
  private void price(int part, BundleFit fit) {
    int from = part * SPOTS_AT_ONCE;
    int to = Math.min(from + SPOTS_AT_ONCE, spots.size());
    for (int b = 0; b < bundles.size(); b++) {
      for (int s = from; s < to; s++) {
        price(b, s, metres[s], fit);
      }
    }
  }

  private void price(int b, int s, double[] metres, BundleFit fit) {
    placeMs[b][s] = REFUSED;
    boolean here = home[b] == s;
    if ((stays[b] && !here) || (lies(b) && rack[s] && !here)) {
      return;
    }
    if (!(here && stays[b]) && !fit.refusalsWhereItLies(b, s).isEmpty()) {
      return;
    }
    long bring = here ? 0 : bringMs(b, s);
    if (bring == REFUSED) {
      return;
    }
    long carry = 0;
    for (int i = 0; i < pulls[b].length; i++) {
      double way = metres[pulls[b][i]];
      if (Double.isInfinite(way) && !here) {
        return;
      }
      carry += time.carryMs(carriers[b][i], Math.min(way, NO_WAY_M));
    }
    carryMs[b][s] = carry;
    placeMs[b][s] = carry + bring + (rack[s] ? (here ? 0 : rackMs[b]) : insideMs[b]);
  }

  /**
   * The work of bringing a bundle to a spot where it is not, and new tags if it lay; REFUSED if
   * that cannot be done.
   */
  private long bringMs(int b, int s) {
    Bundle bundle = bundles.get(b);
    if (byHand()) {
      return hands.workMs(bundle, s, rack[s], time);
    }
    if (!lies(b)) {
      return offTruck(b, s).map(lift -> time.liftMs(lift.driveM())).orElse(REFUSED);
    }
    return lifts
        .move(bundle, massKg[b], centre(home[b]), centre(s))
        .map(move -> time.liftMs(move.driveM()) + time.retagMs())
        .orElse(REFUSED);
  }

  /** The best lift of a bundle from its truck onto a spot, if the machine can do it. */
  Optional<Lifts.Lift> offTruck(int b, int s) {
    Point truck = Objects.requireNonNull(trucks[b]);
    return lifts.offTruck(bundles.get(b), massKg[b], truck, centre(s));
  }

  /** The middle of a spot. */
  Point centre(int spot) {
    return spots.get(spot).footprint().centre();
  }

  /** Whether people unload timber by timber, because there is no machine. */
  boolean byHand() {
    return task.site().byHand();
  }

  /** Whether a bundle lies somewhere from the start. */
  boolean lies(int bundle) {
    return home[bundle] != Occupancy.NOWHERE;
  }

  /** Whether a bundle is on site when a moment begins. */
  boolean isThere(int bundle, int moment) {
    return (there[bundle] >> moment & 1) == 1;
  }

  /** The last moment at which a bundle is there. */
  int lastMoment(int bundle) {
    return 63 - Long.numberOfLeadingZeros(there[bundle]);
  }

  /** Numbers sizes of bundles, so that bundles of one size have one number. */
  private static int[] sizes(List<Bundle> bundles) {
    record Size(double lengthM, double widthM) {}
    List<Size> sizes =
        bundles.stream().map(b -> new Size(b.lengthM(), b.widthM())).distinct().toList();
    return bundles.stream()
        .mapToInt(b -> sizes.indexOf(new Size(b.lengthM(), b.widthM())))
        .toArray();
  }

  /** A number that bundles of one length and width have in common. */
  int sizeOf(int bundle) {
    return sizeOf[bundle];
  }

  /**
   * What a stack on a spot adds to the shared limits when this bundle is its lowest.
   *
   * @param untouched whether the bundle lies there from the start and is not lifted
   */
  SharedLimits.Share share(int spot, int lowest, boolean untouched) {
    SharedLimits.Share stands = standing[lowest];
    return untouched && stands != null && home[lowest] == spot ? stands : share(spot, lowest);
  }

  /** The same on bearers that are laid for it. */
  SharedLimits.Share share(int spot, int lowest) {
    SharedLimits.Share share = shares[spot][sizeOf[lowest]];
    if (share == null) {
      share = shared.share(spots.get(spot), bundles.get(lowest));
      shares[spot][sizeOf[lowest]] = share;
    }
    return share;
  }

  /** Crew time lost at picking a bundle's pieces when its underside is so high up. */
  long pickMs(int bundle, double baseM) {
    return picks[bundle].costMs(baseM);
  }

  /** Whether something beside the spot keeps its stack lower than stacks may be elsewhere. */
  boolean isCapped(int spot) {
    return mostHeightM[spot] < stackHeightM;
  }

  /** The rule that says what a stack on a spot may weigh. */
  Rule loadRule(int spot) {
    return footings.isDeck(footing[spot]) ? Rule.ZONE_LOAD : Rule.GROUND_PRESSURE;
  }

  private static int[] nearest(long[] prices) {
    List<Integer> open = new ArrayList<>();
    IntStream.range(0, prices.length).filter(s -> prices[s] != REFUSED).forEach(open::add);
    open.sort(Comparator.comparingLong((Integer s) -> prices[s]).thenComparing(s -> s));
    return open.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Whether a rack has room for a set of bundles and bears them; the first {@code k} count. */
  boolean rackHolds(int[] set, int k, int spot) {
    for (int moment = 0; moment < moments; moment++) {
      double floorM2 = 0;
      double kg = 0;
      for (int i = 0; i < k; i++) {
        floorM2 += isThere(set[i], moment) ? onEndM2[set[i]] : 0;
        kg += isThere(set[i], moment) ? massKg[set[i]] : 0;
      }
      if (floorM2 > rackFloorM2[spot] + 1e-9
          || kg > massLimitKg[spot] + 1e-9
          || kg > rackMassKg[spot] + 1e-9) {
        return false;
      }
    }
    return true;
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
