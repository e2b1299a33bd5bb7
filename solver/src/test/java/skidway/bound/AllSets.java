package skidway.bound;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Every legal set of bundles on every spot of a small problem, the plain way. */
final class AllSets {
  private final Ground ground;
  private final Cliques cliques;
  private final int moments;
  private final List<Column> columns = new ArrayList<>();

  AllSets(Ground ground, Cliques cliques, int moments) {
    this.ground = ground;
    this.cliques = cliques;
    this.moments = moments;
    for (int s = 0; s < ground.spots(); s++) {
      for (int bits = 1; bits < 1 << ground.bundles(); bits++) {
        int of = bits;
        int[] set = IntStream.range(0, ground.bundles()).filter(b -> (of >> b & 1) == 1).toArray();
        int spot = s;
        boolean open =
            Arrays.stream(set).allMatch(b -> ground.placeMs(b, spot) != Ground.REFUSED)
                && ground.stackMs(set, set.length, s) != Ground.REFUSED;
        if (open) {
          columns.add(new Column(ground, s, set, 0, 0));
        }
      }
    }
  }

  List<Column> columns() {
    return columns;
  }

  /** What a set costs at some prices. */
  long valueMs(Column column, Prices prices) {
    double sum = column.costMs;
    for (int b : column.set) {
      sum -= prices.ms[b];
    }
    for (int rent : cliques.rents(column.spot, column.moments, prices)) {
      sum += prices.ms[rent];
    }
    Ground.Load load = load(column);
    for (int i = 0; i < load.sums.length; i++) {
      sum += load.perKg[i] * massKg(column) * prices.ms[prices.toll(load.sums[i])];
    }
    return (long) sum;
  }

  /**
   * What the cheapest plan costs that may have halves of sets, by a general solver of linear
   * programs (GLOP of OR-Tools): the highest that any prices prove. Not finite if there is none.
   */
  double linearMs() {
    Loader.loadNativeLibraries();
    MPSolver solver = MPSolver.createSolver("GLOP");
    MPObjective objective = solver.objective();
    List<MPConstraint> bundles = rows(solver, ground.bundles(), 1);
    List<MPConstraint> spots = rows(solver, ground.spots(), 0);
    List<MPConstraint> rents = rows(solver, cliques.count() * moments, 0);
    List<MPConstraint> sums = rows(solver, ground.sums(), 0);
    Prices numbers = new Prices(ground.bundles(), cliques.count(), moments, ground.sums());
    for (Column column : columns) {
      MPVariable share = solver.makeNumVar(0, 1, "");
      objective.setCoefficient(share, (double) column.costMs);
      spots.get(column.spot).setCoefficient(share, 1);
      for (int b : column.set) {
        bundles.get(b).setCoefficient(share, 1);
      }
      for (int rent : cliques.rents(column.spot, column.moments, numbers)) {
        rents.get(rent - ground.bundles()).setCoefficient(share, 1);
      }
      Ground.Load load = load(column);
      for (int i = 0; i < load.sums.length; i++) {
        sums.get(load.sums[i]).setCoefficient(share, load.perKg[i] * massKg(column));
      }
    }
    return solver.solve() == MPSolver.ResultStatus.OPTIMAL
        ? objective.value()
        : Double.POSITIVE_INFINITY;
  }

  private static List<MPConstraint> rows(MPSolver solver, int count, double least) {
    return IntStream.range(0, count).mapToObj(i -> solver.makeConstraint(least, 1)).toList();
  }

  private Ground.Load load(Column column) {
    return ground.load(column.spot, ground.lowest(column.set, column.set.length, column.spot));
  }

  private double massKg(Column column) {
    return Arrays.stream(column.set).mapToDouble(ground::massKg).sum();
  }
}
