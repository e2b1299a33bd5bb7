package skidway.shakeout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import skidway.erection.Placement;
import skidway.geometry.Walker;
import skidway.geometry.WalkingMap;
import skidway.plan.Brought;
import skidway.plan.PileTrip;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.Way;
import skidway.rules.Setting;
import skidway.site.Footprint;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.Bundle;
import skidway.timber.Load;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;

/**
 * Takes every piece from its truck to its wall, one event after the other, with a stopwatch; a
 * piece is in one place at any time, and nothing is taken from where it is not. Shares nothing with
 * the planner but walks between two points; it is two people who carry (a test's pieces are chosen
 * so).
 */
final class FromTruckToWall {
  private static final int TWO = 2;

  private final Task task;

  /** Where each piece is: a load, a spot, a pile or a wall. */
  private final Map<String, String> placeOf = new HashMap<>();

  /** Where the machine stood when it put a bundle down last. */
  private final Map<String, Point> putDownFrom = new HashMap<>();

  private final Map<String, Spot> spots = new HashMap<>();

  /** Where people stand to draw pieces, by spot and pile. */
  private final Map<String, Point> accessOf = new HashMap<>();

  private final Map<String, Double> heightOf = new HashMap<>();
  private final Map<String, List<String>> beneath = new HashMap<>();
  private final Map<String, Double> outAt = new HashMap<>();
  private final Set<String> risen = new TreeSet<>();
  private final Map<Set<String>, WalkingMap> maps = new HashMap<>();
  private double seconds;

  private FromTruckToWall(Task task) {
    this.task = task;
  }

  /** Person-seconds from the first truck until the last piece is laid, the machine's included. */
  static double seconds(Task task, Plan plan, List<Wave> waves) {
    FromTruckToWall site = new FromTruckToWall(task);
    for (Bundle bundle : task.delivery().bundles()) {
      bundle.pieces().forEach(piece -> site.placeOf.put(piece.mark(), bundle.loadId()));
    }
    plan.stacks().forEach(stack -> site.spots.put(stack.spot().id(), stack.spot()));
    plan.steps().forEach(site::unload);
    plan.stacks().forEach(site::put);
    List<Placement> order = task.pullOrder().placements();
    double level = 0;
    for (int i = 0; i < order.size(); i++) {
      Placement piece = order.get(i);
      level += i > 0 && order.get(i - 1).bottomM() < piece.bottomM() - 1e-6 ? 1 : 0;
      for (Wave wave : waves) {
        if (wave.laidBefore() == i) {
          site.bringIn(wave, level - 0.5);
        }
      }
      site.lay(piece, level);
    }
    for (Piece piece : task.delivery().pieces()) {
      assertThat(site.placeOf).containsEntry(piece.mark(), piece.wallId());
    }
    return site.seconds;
  }

  private void move(String mark, String from, String to) {
    assertThat(placeOf.replace(mark, from, to)).as("%s is at %s", mark, from).isTrue();
  }

  private void unload(Step step) {
    if (task.site().byHand()) {
      carryOff(step);
      return;
    }
    Bundle bundle = task.delivery().bundle(step.bundleId()).orElseThrow();
    Load load = task.delivery().load(bundle.loadId()).orElseThrow();
    Point truck = task.site().truckStand(load.truckStandId()).orElseThrow().area().centre();
    Point from = step.kind().offTruck() ? truck : putDownFrom.get(bundle.id());
    putDownFrom.put(bundle.id(), stand(step.standId()));
    lift(from.distanceTo(stand(step.standId())));
    bundle.pieces().forEach(piece -> move(piece.mark(), step.fromId(), step.toId()));
  }

  /** Every timber by two people, from the nearer long side of its truck. */
  private void carryOff(Step step) {
    Bundle bundle = task.delivery().bundle(step.bundleId()).orElseThrow();
    Load load = task.delivery().load(bundle.loadId()).orElseThrow();
    Footprint truck = task.site().truckStand(load.truckStandId()).orElseThrow().area();
    Point along = truck.along();
    boolean isLong = truck.lengthM() > truck.widthM();
    Point off =
        isLong ? along.turnedLeft().times(truck.widthM() / 2) : along.times(truck.lengthM() / 2);
    Point to = spots.get(step.toId()).access();
    double metres =
        Math.min(
            map().metres(truck.centre().plus(off), to),
            map().metres(truck.centre().minus(off), to));
    for (Piece piece : bundle.pieces()) {
      move(piece.mark(), step.fromId(), step.toId());
      seconds += walk(metres);
    }
    if (spots.get(step.toId()).kind() != SpotKind.RACK) {
      seconds += setting(Setting.PILE_SET_UP);
      seconds += setting(Setting.LAY_PIECE) * bundle.pieces().size();
    }
  }

  private void lift(double driveM) {
    seconds +=
        (setting(Setting.MACHINE_LIFT) + 2 * driveM / setting(Setting.MACHINE_SPEED))
            * setting(Setting.MACHINE_CREW);
  }

  private void put(Stack stack) {
    accessOf.put(stack.spot().id(), stack.spot().access());
    for (String id : stack.bundleIds()) {
      for (Piece piece : task.delivery().bundle(id).orElseThrow().pieces()) {
        assertThat(placeOf).containsEntry(piece.mark(), stack.spot().id());
        seconds += isRack(stack) ? setting(Setting.RACK_PIECE) : 0;
      }
    }
    if (!isRack(stack)) {
      pile(stack);
    }
  }

  private static boolean isRack(Stack stack) {
    return stack.spot().kind() == SpotKind.RACK;
  }

  private void pile(Stack stack) {
    double topM = 0;
    List<String> lower = new ArrayList<>();
    for (String id : stack.bundleIds()) {
      Bundle bundle = task.delivery().bundle(id).orElseThrow();
      topM += setting(Setting.BEARER_HEIGHT);
      int layers = bundle.packed().stream().mapToInt(PackedPiece::layer).max().orElseThrow();
      for (PackedPiece packed : bundle.packed()) {
        String mark = packed.piece().mark();
        int layer = turned(packed.layer(), layers);
        heightOf.put(mark, topM + bundle.heightM() / layers * (layer - 0.5));
        List<String> under = new ArrayList<>(lower);
        bundle.packed().stream()
            .filter(other -> turned(other.layer(), layers) < layer)
            .forEach(other -> under.add(other.piece().mark()));
        beneath.put(mark, under);
      }
      topM += bundle.heightM();
      bundle.pieces().forEach(piece -> lower.add(piece.mark()));
    }
  }

  /** What people carry off first was on top and lies lowest. */
  private int turned(int layer, int layers) {
    return task.site().byHand() ? layers + 1 - layer : layer;
  }

  private void bringIn(Wave wave, double now) {
    wave.piles().forEach(pile -> accessOf.put(pile.id(), pile.spot().access()));
    for (Brought brought : wave.brought()) {
      takeOut(brought.mark(), now);
      move(brought.mark(), brought.fromSpotId(), brought.pileId());
      Point from = accessOf.get(brought.fromSpotId());
      boolean byHand = brought.way() == Way.BY_HAND;
      seconds += setting(Setting.LAY_PIECE) * (byHand ? 1 : 2);
      seconds += byHand ? walk(map().metres(from, accessOf.get(brought.pileId()))) : 0;
    }
    for (TimberPile pile : wave.piles()) {
      seconds += setting(Setting.PILE_SET_UP);
      double undersideM = setting(Setting.BEARER_HEIGHT);
      for (List<String> layer : pile.layers()) {
        double thickM = piece(layer.get(0)).section().heightM();
        for (String mark : layer) {
          heightOf.put(mark, undersideM + thickM / 2);
        }
        undersideM += thickM + setting(Setting.STICKER_HEIGHT);
      }
    }
    wave.trips().forEach(this::drive);
  }

  private void drive(PileTrip trip) {
    trip.marks().forEach(mark -> assertThat(placeOf).containsEntry(mark, trip.pileId()));
    lift(stand(trip.pickStandId()).distanceTo(stand(trip.standId())));
  }

  private Point stand(String id) {
    return task.site().machine().stand(id).orElseThrow().at();
  }

  private void lay(Placement placement, double level) {
    String mark = placement.piece().mark();
    if (outAt.containsKey(mark)) {
      pick(mark);
    } else {
      takeOut(mark, level);
    }
    String from = placeOf.getOrDefault(mark, "");
    assertThat(accessOf).as("people draw %s where it lies", mark).containsKey(from);
    seconds += walk(map().metres(List.of(accessOf.get(from)), List.of(placement))[0][0]);
    move(mark, from, placement.wall().id());
    if (placement.topM() > setting(Setting.STEP_OVER)) {
      risen.add(placement.wall().id());
    }
  }

  /** Out of its bundle: picked, and moved aside before if something beneath it went earlier. */
  private void takeOut(String mark, double now) {
    boolean uncovered =
        beneath.getOrDefault(mark, List.of()).stream()
            .anyMatch(lower -> outAt.getOrDefault(lower, now) < now);
    seconds += uncovered ? setting(Setting.REHANDLE_PIECE) : 0;
    outAt.put(mark, now);
    pick(mark);
  }

  private void pick(String mark) {
    // What stands on end is picked as well as can be.
    double heightCm = heightOf.containsKey(mark) ? heightOf.get(mark) * 100 : 75;
    double lost = Math.min(1, 0.003 * Math.abs(heightCm - 75));
    seconds += TWO * setting(Setting.PICK_TIME) * lost;
  }

  private double walk(double metres) {
    return TWO * metres * (1 / setting(Setting.LOADED_SPEED) + 1 / setting(Setting.EMPTY_SPEED));
  }

  private WalkingMap map() {
    Walker walker = new Walker(setting(Setting.STEP_OVER), setting(Setting.CLIMB_FACTOR));
    return maps.computeIfAbsent(
        Set.copyOf(risen), walls -> WalkingMap.of(task.site(), walls, walker));
  }

  private Piece piece(String mark) {
    return task.delivery().pieces().stream()
        .filter(piece -> piece.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private double setting(Setting setting) {
    return task.settings().get(setting);
  }
}
