package skidway.shakeout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.geometry.Walker;
import skidway.geometry.WalkingDistances;
import skidway.limits.PickHeight;
import skidway.plan.Plan;
import skidway.plan.Presence;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.staging.CrewTime;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;

/**
 * A plan's timbers in arrays, by their place in the pull order: where each lies, what lies beneath
 * it, and what pulling it straight from its bundle costs. Never changes after it is built.
 */
final class Timbers {
  /** No stack: its bundle has no spot. */
  static final int NOWHERE = -1;

  /** A walk that counts for one that does not exist; as where bundles are staged. */
  static final double NO_WAY_M = 1000;

  final Task task;
  final PullOrder order;
  final List<Placement> pieces;
  final List<Stack> stacks;
  final CrewTime time;
  final Walker walker;

  /** The stack of each piece, or {@link #NOWHERE}. */
  final int[] stack;

  private final @Nullable Bundle[] bundle;
  final int[] people;

  /** What lies beneath each piece: lower layers of its bundle, and lower bundles that it meets. */
  final int[][] beneath;

  /** What lies over each piece: those that it lies beneath. */
  final int[][] above;

  /** The turn of each piece, which all of its level have. */
  final int[] turn;

  /** Whether it stands on end, in any order, so that nothing lies beneath anything. */
  final boolean[] upright;

  /** How many pieces are laid when its bundle comes. */
  final int[] comesAfter;

  /** Person-milliseconds lost at picking it from its bundle. */
  final long[] pickMs;

  /** Person-milliseconds of carrying it straight to its place. */
  final long[] carryMs;

  Timbers(Task task, Plan plan) {
    this.task = task;
    Settings settings = task.settings();
    order = task.pullOrder();
    pieces = order.placements();
    stacks = plan.stacks();
    time = new CrewTime(settings);
    walker = new Walker(settings.get(Setting.STEP_OVER), settings.get(Setting.CLIMB_FACTOR));
    int n = pieces.size();
    stack = new int[n];
    bundle = new Bundle[n];
    people = new int[n];
    beneath = new int[n][0];
    upright = new boolean[n];
    turn = new int[n];
    comesAfter = new int[n];
    pickMs = new long[n];
    carryMs = new long[n];
    Arrays.fill(stack, NOWHERE);
    for (int i = 0; i < n; i++) {
      turn[i] = order.turn(i);
      people[i] = time.carriers(pieces.get(i).piece());
    }
    Presence presence = Presence.of(task);
    double[][] metres =
        WalkingDistances.between(
            task.site(),
            walker,
            stacks.stream().map((Stack some) -> some.spot().access()).toList(),
            order);
    for (int s = 0; s < stacks.size(); s++) {
      take(s, presence, metres[s]);
    }
    above = turnedRound(beneath);
  }

  private static int[][] turnedRound(int[][] beneath) {
    List<List<Integer>> above = new ArrayList<>();
    for (int i = 0; i < beneath.length; i++) {
      above.add(new ArrayList<>());
    }
    for (int i = 0; i < beneath.length; i++) {
      for (int lower : beneath[i]) {
        above.get(lower).add(i);
      }
    }
    return above.stream()
        .map(some -> some.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  private void take(int s, Presence presence, double[] metres) {
    Stack some = stacks.get(s);
    boolean rack = some.spot().kind() == SpotKind.RACK;
    double bearerM = task.settings().get(Setting.BEARER_HEIGHT);
    List<Bundle> lower = new ArrayList<>();
    for (String id : some.bundleIds()) {
      Bundle own = task.delivery().bundle(id).orElseThrow();
      int comes = presence.comes(own);
      double undersideM = bearerM;
      for (Bundle other : lower) {
        undersideM += presence.isThere(other, comes) ? bearerM + other.heightM() : 0;
      }
      List<Integer> under = new ArrayList<>();
      for (Bundle other : lower) {
        if (!rack && (presence.moments(other) & presence.moments(own)) != 0) {
          other.pieces().forEach(piece -> under.add(order.indexOf(piece)));
        }
      }
      for (PackedPiece packed : own.packed()) {
        int i = order.indexOf(packed.piece());
        stack[i] = s;
        bundle[i] = own;
        upright[i] = rack;
        comesAfter[i] = presence.pulledBefore(comes);
        carryMs[i] = time.carryMs(people[i], Math.min(metres[i], NO_WAY_M));
        if (!rack) {
          double heightM = PickHeight.metres(undersideM, own, task.layerOnSpot(own, packed));
          pickMs[i] = time.pickMs(people[i], heightM);
          beneath[i] = beneath(own, packed, under);
        }
      }
      lower.add(own);
    }
  }

  private int[] beneath(Bundle own, PackedPiece packed, List<Integer> under) {
    List<Integer> all = new ArrayList<>(under);
    task.beneathOnSpot(own, packed).forEach(lower -> all.add(order.indexOf(lower)));
    return all.stream().mapToInt(Integer::intValue).sorted().toArray();
  }

  int count() {
    return pieces.size();
  }

  Piece piece(int i) {
    return pieces.get(i).piece();
  }

  /** The bundle of a piece that lies on some stack. */
  Bundle bundle(int i) {
    Bundle own = bundle[i];
    if (own == null) {
      throw new IllegalArgumentException("Piece " + piece(i).mark() + " lies nowhere.");
    }
    return own;
  }

  Spot spot(int i) {
    return stacks.get(stack[i]).spot();
  }

  /** Whether any of a stack's pieces is on site at some time from one pull to before another. */
  boolean stands(int s, int from, int to) {
    Map<String, Integer> lastPull = new HashMap<>();
    Map<String, Integer> comes = new HashMap<>();
    for (int i = 0; i < count(); i++) {
      if (stack[i] == s) {
        lastPull.merge(bundle(i).id(), i, Math::max);
        comes.put(bundle(i).id(), comesAfter[i]);
      }
    }
    boolean empty = stacks.get(s).bundleIds().stream().anyMatch(id -> !lastPull.containsKey(id));
    return empty
        || lastPull.entrySet().stream()
            .anyMatch(last -> last.getValue() >= from && comes.getOrDefault(last.getKey(), 0) < to);
  }
}
