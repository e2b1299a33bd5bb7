package skidway.shakeout;

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
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.Way;
import skidway.rules.Setting;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;

/**
 * Carries every piece from its stack to its wall, one event after the other, with a stopwatch.
 * Shares nothing with the planner but walks between two points; who carries what is read off the
 * waves, for the rest it is two people (a test's pieces are chosen so).
 */
final class CarriedByHand {
  private static final int TWO = 2;

  private final Task task;
  private final Map<String, Point> accessOf = new HashMap<>();
  private final Map<String, Double> heightOf = new HashMap<>();
  private final Map<String, List<String>> beneath = new HashMap<>();
  private final Map<String, Double> outAt = new HashMap<>();
  private final Map<String, String> pileOf = new HashMap<>();
  private final Set<String> risen = new TreeSet<>();
  private final Map<Set<String>, WalkingMap> maps = new HashMap<>();
  private double seconds;

  private CarriedByHand(Task task) {
    this.task = task;
  }

  /** Person-seconds until the last piece is laid, the machine's trips to piles included. */
  static double seconds(Task task, Plan plan, List<Wave> waves) {
    CarriedByHand site = new CarriedByHand(task);
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
    return site.seconds;
  }

  private void put(Stack stack) {
    double topM = 0;
    List<String> lower = new ArrayList<>();
    for (String id : stack.bundleIds()) {
      Bundle bundle = task.delivery().bundle(id).orElseThrow();
      topM += setting(Setting.BEARER_HEIGHT);
      int layers = bundle.packed().stream().mapToInt(PackedPiece::layer).max().orElseThrow();
      for (PackedPiece packed : bundle.packed()) {
        String mark = packed.piece().mark();
        accessOf.put(mark, stack.spot().access());
        heightOf.put(mark, topM + bundle.heightM() / layers * (packed.layer() - 0.5));
        List<String> under = new ArrayList<>(lower);
        bundle.packed().stream()
            .filter(other -> other.layer() < packed.layer())
            .forEach(other -> under.add(other.piece().mark()));
        beneath.put(mark, under);
      }
      topM += bundle.heightM();
      bundle.pieces().forEach(piece -> lower.add(piece.mark()));
    }
  }

  private void bringIn(Wave wave, double now) {
    Map<String, TimberPile> piles = new HashMap<>();
    wave.piles().forEach(pile -> piles.put(pile.id(), pile));
    for (Brought brought : wave.brought()) {
      takeOut(brought.mark(), now);
      Point to = piles.get(brought.pileId()).spot().access();
      boolean byHand = brought.way() == Way.BY_HAND;
      seconds += setting(Setting.LAY_PIECE) * (byHand ? 1 : 2);
      seconds += byHand ? walk(map().metres(accessOf.get(brought.mark()), to)) : 0;
      pileOf.put(brought.mark(), brought.pileId());
      accessOf.put(brought.mark(), to);
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
    double metres = stand(trip.pickStandId()).distanceTo(stand(trip.standId()));
    seconds +=
        (setting(Setting.MACHINE_LIFT) + 2 * metres / setting(Setting.MACHINE_SPEED))
            * setting(Setting.MACHINE_CREW);
  }

  private Point stand(String id) {
    return task.site().machine().stands().stream()
        .filter(stand -> stand.id().equals(id))
        .map(MachineStand::at)
        .findFirst()
        .orElseThrow();
  }

  private void lay(Placement placement, double level) {
    String mark = placement.piece().mark();
    if (pileOf.containsKey(mark)) {
      pick(mark);
    } else {
      takeOut(mark, level);
    }
    seconds += walk(map().metres(List.of(accessOf.get(mark)), List.of(placement))[0][0]);
    if (placement.topM() > setting(Setting.STEP_OVER)) {
      risen.add(placement.wall().id());
    }
  }

  /** Out of its bundle: picked, and moved aside before if something beneath it went earlier. */
  private void takeOut(String mark, double now) {
    boolean uncovered =
        beneath.get(mark).stream().anyMatch(lower -> outAt.getOrDefault(lower, now) < now);
    seconds += uncovered ? setting(Setting.REHANDLE_PIECE) : 0;
    outAt.put(mark, now);
    pick(mark);
  }

  private void pick(String mark) {
    double lost = Math.min(1, 0.003 * Math.abs(heightOf.get(mark) * 100 - 75));
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
