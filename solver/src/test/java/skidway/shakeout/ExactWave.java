package skidway.shakeout;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import skidway.rules.Setting;

/**
 * The cheapest wave by hand of those that may be brought in at a refill point, proven by an exact
 * solver: which piece into which layer of which pile. What piles may weigh is left out, so no wave
 * is cheaper. For timbers of one section.
 */
final class ExactWave {
  private final Timbers timbers;
  private final Room room;
  private final Pricing pricing;
  private final int from;
  private final int to;
  private final double[] heightsM;
  private final CpModel model = new CpModel();
  private final LinearExprBuilder costMs = LinearExpr.newBuilder();

  /** By piece, place and layer. */
  private final Literal[][][] lies;

  private final LinearExprBuilder[] brought;

  private ExactWave(Timbers timbers, Room room, int from, int to, double[] heightsM) {
    this.timbers = timbers;
    this.room = room;
    this.pricing = new Pricing(timbers, room);
    this.from = from;
    this.to = to;
    this.heightsM = heightsM.clone();
    lies = new Literal[to - from][heightsM.length][];
    brought = new LinearExprBuilder[to - from];
    places();
    for (int p = 0; p < heightsM.length; p++) {
      if (heightsM[p] > 0) {
        pile(p);
      }
    }
    asides();
    model.minimize(costMs);
  }

  /** What the wave costs beyond pulling every piece straight, person-milliseconds; 0 or less. */
  static long leastMs(Timbers timbers, Room room, int from, int to, double[] heightsM) {
    Loader.loadNativeLibraries();
    ExactWave wave = new ExactWave(timbers, room, from, to, heightsM);
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1).setRandomSeed(1);
    if (solver.solve(wave.model) != CpSolverStatus.OPTIMAL) {
      throw new IllegalStateException("The exact solver proves nothing.");
    }
    return Math.round(solver.objectiveValue());
  }

  private void places() {
    double[][] bringM = room.bringM(from);
    for (int i = from; i < to; i++) {
      brought[i - from] = LinearExpr.newBuilder();
      List<Literal> anywhere = new ArrayList<>();
      for (int p = 0; p < heightsM.length; p++) {
        lies[i - from][p] = layers(i, p, bringM[timbers.stack[i]][p]);
        anywhere.addAll(Arrays.asList(lies[i - from][p]));
      }
      anywhere.forEach(brought[i - from]::add);
      model.addAtMostOne(anywhere);
    }
  }

  private Literal[] layers(int i, int place, double bringM) {
    boolean fits =
        timbers.piece(i).lengthM() <= room.places.get(place).footprint().lengthM() + 1e-9;
    if (heightsM[place] <= 0 || !fits || !Double.isFinite(bringM) || timbers.comesAfter[i] > from) {
      return new Literal[0];
    }
    Literal[] layers = new Literal[pricing.layers(timbers.piece(i), heightsM[place])];
    long ms =
        pricing.bringMs(i, bringM)
            + pricing.layMs(false)
            + pricing.fromPileMs(i, place)
            - timbers.carryMs[i];
    for (int layer = 0; layer < layers.length; layer++) {
      layers[layer] = model.newBoolVar("");
      long pickMs = pricing.pilePickMs(timbers.piece(i), timbers.people[i], layer);
      costMs.addTerm(layers[layer], ms + pickMs);
    }
    return layers;
  }

  private void pile(int place) {
    BoolVar stands = model.newBoolVar("");
    costMs.addTerm(stands, timbers.time.pileMs());
    for (int other = 0; other < place; other++) {
      if (heightsM[other] > 0 && room.clash(place, other)) {
        inTheWay(place, other);
      }
    }
    int perLayer = pricing.perLayer(timbers.piece(from));
    double overM = 2 * timbers.task.settings().get(Setting.END_OVERHANG);
    for (int i = from; i < to; i++) {
      LinearExprBuilder beneath = LinearExpr.newBuilder();
      for (int later = i + 1; later < to; later++) {
        Literal[] lower = lies[later - from][place];
        Arrays.stream(lower).forEach(beneath::add);
        if (timbers.piece(i).lengthM() > timbers.piece(later).lengthM() + overM + 1e-9) {
          notBoth(lies[i - from][place], lower);
        }
      }
      Literal[] layers = lies[i - from][place];
      for (int layer = 0; layer < layers.length; layer++) {
        model.addImplication(layers[layer], stands);
        model
            .addLinearConstraint(beneath, (long) layer * perLayer, (layer + 1L) * perLayer - 1)
            .onlyEnforceIf(layers[layer]);
      }
    }
  }

  private void inTheWay(int place, int other) {
    for (int i = from; i < to; i++) {
      for (int j = from; j < to; j++) {
        notBoth(lies[i - from][place], lies[j - from][other]);
      }
    }
  }

  private void notBoth(Literal[] some, Literal[] others) {
    for (Literal one : some) {
      Arrays.stream(others).forEach(other -> model.addAtMostOne(new Literal[] {one, other}));
    }
  }

  /** A piece is moved aside if something beneath it goes earlier, brought or pulled straight. */
  private void asides() {
    long ms = timbers.time.rehandleMs(1);
    for (int i = from; i < to; i++) {
      int upper = i;
      boolean ifStraight =
          IntStream.of(timbers.beneath[i]).anyMatch(j -> timbers.turn[j] < timbers.turn[upper]);
      boolean ifBrought = IntStream.of(timbers.beneath[i]).anyMatch(j -> j < from);
      BoolVar aside = model.newBoolVar("");
      costMs.addTerm(aside, ms);
      costMs.add(ifStraight ? -ms : 0);
      LinearExprBuilder orBrought = LinearExpr.newBuilder().add(aside).add(brought[i - from]);
      if (ifBrought) {
        model.addEquality(aside, 1);
      } else if (ifStraight) {
        model.addGreaterOrEqual(orBrought, 1);
      } else {
        for (int lower : timbers.beneath[i]) {
          if (lower >= from && lower < to) {
            model.addGreaterOrEqual(orBrought, brought[lower - from]);
          }
        }
      }
    }
  }
}
