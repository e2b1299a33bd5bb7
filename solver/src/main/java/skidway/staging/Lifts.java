package skidway.staging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import skidway.limits.LoadChart;
import skidway.limits.SlingTension;
import skidway.limits.TravelWidth;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Grip;
import skidway.site.Lane;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Site;
import skidway.timber.Bundle;
import skidway.timber.Load;

/** Chooses the stand from which the machine puts a bundle down: the one with the shortest drive. */
public final class Lifts {
  /**
   * A stand, the distance driven to it, and the reach from it, metres.
   *
   * @param capacityKg how heavy the bundle may be at that reach
   * @param pickStand where the machine picks the bundle up; the same stand unless it drives with it
   */
  public record Lift(
      MachineStand stand, double driveM, double reachM, double capacityKg, MachineStand pickStand) {
    Lift(MachineStand stand, double driveM, double reachM, double capacityKg) {
      this(stand, driveM, reachM, capacityKg, stand);
    }
  }

  /** A stand and how wide the lane to it is; infinite if it is open. */
  private record Post(MachineStand stand, double laneM) {
    Reach to(Point place) {
      return new Reach(this, stand.at().distanceTo(place));
    }
  }

  /** A stand and how far a place is from it. */
  private record Reach(Post post, double metres) {
    MachineStand stand() {
      return post.stand();
    }
  }

  /** From a truck to a place. */
  private record Way(Point truck, Point place) {}

  /** No lift at all: people carry the bundle's timbers. */
  static final Lift BY_HAND = new Lift(new MachineStand("", new Point(0, 0)), 0, 0, 0);

  private final Task task;
  private final Machine machine;
  private final double farthestM;
  private final LinesAbove lines;
  private final TravelWidth travelWidth;
  private final List<Post> posts;

  /** Where the truck of each load stands. */
  private final Map<String, Point> trucks = new HashMap<>();

  /** Several searches ask at once. */
  private final Map<Point, List<Reach>> inReach = new ConcurrentHashMap<>();

  /** The same stands, the shortest drive from the truck first. */
  private final Map<Way, List<Reach>> offTruck = new ConcurrentHashMap<>();

  public Lifts(Task task) {
    this.task = task;
    this.machine = task.site().machine();
    this.farthestM = LoadChart.farthestM(machine);
    this.lines = new LinesAbove(task);
    this.travelWidth =
        new TravelWidth(
            task.settings().get(Setting.TRAVEL_CLEARANCE),
            task.settings().get(Setting.TRAVEL_LEAST));
    this.posts =
        machine.stands().stream().map(stand -> new Post(stand, laneM(task.site(), stand))).toList();
    for (Load load : task.delivery().loads()) {
      task.site()
          .truckStand(load.truckStandId())
          .ifPresent(stand -> trucks.put(load.id(), stand.area().centre()));
    }
  }

  /**
   * The best lift of a bundle from its truck onto a place, if the machine can do it.
   *
   * @param truck where the truck of its load stands
   */
  Optional<Lift> offTruck(Bundle bundle, double massKg, Point truck, Point place) {
    for (Reach reach : shortestDriveFirst(truck, place)) {
      Lift lift = lift(bundle, reach, truck);
      if (refusals(bundle, massKg, lift, List.of(truck, lift.stand().at(), place)).isEmpty()
          && laneTakes(bundle, reach)) {
        return Optional.of(lift);
      }
    }
    return Optional.empty();
  }

  /**
   * The best lift of a bundle between two places from one stand, for a machine standing somewhere.
   */
  Optional<Lift> across(Bundle bundle, double massKg, Point machineAt, Point from, Point to) {
    Lift best = null;
    for (Reach reach : reaches(to)) {
      Point stand = reach.stand().at();
      double longerM = Math.max(reach.metres(), stand.distanceTo(from));
      Reach farther = new Reach(reach.post(), longerM);
      Lift lift = lift(bundle, farther, machineAt);
      if (isBetter(lift, best)
          && refusals(bundle, massKg, lift, List.of(from, stand, to)).isEmpty()) {
        best = lift;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * The best lift of a bundle that lies on site to another place: picked up from one stand, driven
   * to another if need be, put down from there.
   */
  public Optional<Lift> move(Bundle bundle, double massKg, Point from, Point to) {
    Lift best = null;
    for (Reach pick : reaches(from)) {
      Point pickAt = pick.stand().at();
      Lift up = lift(bundle, pick, pickAt);
      if (!refusals(bundle, massKg, up, List.of(from, pickAt)).isEmpty()) {
        continue;
      }
      for (Reach reach : reaches(to)) {
        Lift down = lift(bundle, reach, pickAt);
        Lift both = farther(up, down);
        List<Point> way = List.of(from, pickAt, reach.stand().at(), to);
        if (isBetter(both, best)
            && refusals(bundle, massKg, down, way).isEmpty()
            && mayDrive(bundle, pick, reach)) {
          best = both;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** The stands from which the chart goes as far as a place, in the machine's order. */
  private List<Reach> reaches(Point place) {
    return inReach.computeIfAbsent(
        place,
        there ->
            posts.stream()
                .map(post -> post.to(there))
                .filter(reach -> reach.metres() <= farthestM)
                .toList());
  }

  /** Then the shortest reach, then the machine's order; a micrometre is no difference. */
  private List<Reach> shortestDriveFirst(Point truck, Point place) {
    return offTruck.computeIfAbsent(
        new Way(truck, place),
        way ->
            reaches(place).stream()
                .sorted(
                    Comparator.comparingLong(
                            (Reach reach) -> micrometres(truck.distanceTo(reach.stand().at())))
                        .thenComparingLong(reach -> micrometres(reach.metres())))
                .toList());
  }

  private static long micrometres(double metres) {
    return Math.round(metres * 1e6);
  }

  private static double laneM(Site site, MachineStand stand) {
    return site.lanes().stream()
        .filter(lane -> lane.id().equals(stand.laneId()))
        .mapToDouble(Lane::widthM)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private boolean mayDrive(Bundle bundle, Reach from, Reach to) {
    return from.stand().equals(to.stand()) || (laneTakes(bundle, from) && laneTakes(bundle, to));
  }

  /** A lift told by the end at which the machine reaches farther. */
  private static Lift farther(Lift up, Lift down) {
    Lift end = up.reachM() > down.reachM() ? up : down;
    return new Lift(down.stand(), down.driveM(), end.reachM(), end.capacityKg(), up.stand());
  }

  /**
   * The rules that keep the machine from putting a bundle down at a place from any stand; of the
   * stand that comes nearest to doing it. None if it can be done.
   */
  List<Rule> refusals(Bundle bundle, double massKg, Point place) {
    Set<Rule> fewest = EnumSet.noneOf(Rule.class);
    Point truck = truckOf(bundle);
    for (Post post : posts) {
      Reach reach = post.to(place);
      Lift lift = lift(bundle, reach, truck);
      List<Point> way = List.of(truck, post.stand().at(), place);
      Set<Rule> refusals = refusals(bundle, massKg, lift, way);
      if (!laneTakes(bundle, reach)) {
        refusals.add(Rule.TRAVEL_WIDTH);
      }
      if (refusals.isEmpty()) {
        return List.of();
      }
      if (fewest.isEmpty() || refusals.size() < fewest.size()) {
        fewest = refusals;
      }
    }
    return new ArrayList<>(fewest);
  }

  /** How heavy a bundle may be at a reach, kg. */
  double capacityKg(Bundle bundle, double reachM) {
    return LoadChart.bundleCapacityKg(machine, reachM, bundle.widthM());
  }

  private Lift lift(Bundle bundle, Reach reach, Point machineAt) {
    double driveM = machineAt.distanceTo(reach.stand().at());
    return new Lift(reach.stand(), driveM, reach.metres(), capacityKg(bundle, reach.metres()));
  }

  private static boolean isBetter(Lift lift, @Nullable Lift best) {
    return best == null
        || lift.driveM() < best.driveM() - 1e-9
        || (lift.driveM() < best.driveM() + 1e-9 && lift.reachM() < best.reachM() - 1e-9);
  }

  /**
   * @param way of the hook, corner by corner
   */
  private Set<Rule> refusals(Bundle bundle, double massKg, Lift lift, List<Point> way) {
    Set<Rule> refusals = EnumSet.noneOf(Rule.class);
    if (lift.reachM() > farthestM) {
      refusals.add(Rule.MACHINE_REACH);
    } else if (lift.capacityKg() < massKg) {
      refusals.add(Rule.MACHINE_CAPACITY);
    }
    if (machine.grip() instanceof Grip.Slings slings) {
      slings(slings, massKg, refusals);
    }
    if (!lines.clear(way, bundle)) {
      refusals.add(Rule.LINE_LIFT);
    }
    return refusals;
  }

  private void slings(Grip.Slings slings, double massKg, Set<Rule> refusals) {
    if (slings.angleDeg().isEmpty()) {
      return;
    }
    double angleDeg = slings.angleDeg().getAsDouble();
    if (angleDeg < task.settings().get(Setting.SLING_ANGLE) - 1e-9) {
      refusals.add(Rule.SLING_ANGLE);
    }
    double legKg = slings.legKg().orElse(Double.POSITIVE_INFINITY);
    if (SlingTension.legKg(massKg, angleDeg) > legKg + 1e-9) {
      refusals.add(Rule.SLING_LOAD);
    }
  }

  /** Whether the bundle gets to a stand along the stand's lane. */
  private boolean laneTakes(Bundle bundle, Reach reach) {
    return travelWidth.neededM(machine, bundle).orElse(0) <= reach.post().laneM() + 1e-9;
  }

  /** Where the truck of a bundle's load stands. */
  Point truckOf(Bundle bundle) {
    Point truck = trucks.get(bundle.loadId());
    if (truck == null) {
      throw new IllegalArgumentException("The load of " + bundle.id() + " has no stand.");
    }
    return truck;
  }
}
