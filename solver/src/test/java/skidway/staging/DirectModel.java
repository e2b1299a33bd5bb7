package skidway.staging;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * A general exact solver (constraint programming with clause learning) on a direct model: which
 * spot each bundle lies on, and which bundles lie beneath which. Prices are those of the board.
 *
 * <p>Each bundle may go to its cheapest spots only and to the one where it lies in the first
 * staging, which is given as a hint. For jobs that come at one moment, on free ground, without
 * racks; what else the rules say is checked afterwards.
 */
final class DirectModel implements Contestant {
  private static final int SPOTS_EACH = 60;
  private static final double MM_PER_M = 1000;

  private final ExactSolver exact;

  DirectModel(int workers) {
    this.exact = new ExactSolver(workers);
  }

  @Override
  public String name() {
    return "exact solver, direct";
  }

  @Override
  public int[] improve(Board board, int[] start, long seed, double processorS) {
    return new Model(board, start).solve(seed, processorS);
  }

  private final class Model {
    private final Board board;
    private final int[] start;
    private final int n;
    private final CpModel model = new CpModel();
    private final LinearExprBuilder costMs = LinearExpr.newBuilder();
    private final Map<Integer, Literal>[] lies;
    private final Literal[][] beneath;
    private final IntVar[] baseMm;
    private final int mostMm;

    Model(Board board, int[] start) {
      this.board = board;
      this.start = start;
      this.n = board.bundleCount();
      this.mostMm = (int) Math.floor(Arrays.stream(board.mostHeightM).max().orElse(0) * MM_PER_M);
      this.lies = maps(n);
      this.beneath = new Literal[n][n];
      this.baseMm = new IntVar[n];
      places();
      exclusions();
      for (int a = 0; a < n; a++) {
        for (int b = a + 1; b < n; b++) {
          pair(a, b);
        }
      }
      for (int b = 0; b < n; b++) {
        height(b);
        work(b);
      }
      slenderness();
      model.minimize(costMs);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Map<Integer, Literal>[] maps(int n) {
      Map<Integer, Literal>[] maps = new Map[n];
      Arrays.setAll(maps, b -> new HashMap<>());
      return maps;
    }

    private void places() {
      for (int b = 0; b < n; b++) {
        for (int i = 0; i < Math.min(SPOTS_EACH, board.near[b].length); i++) {
          addPlace(b, board.near[b][i]);
        }
        addPlace(b, start[b]);
        model.addExactlyOne(lies[b].values());
      }
    }

    private void addPlace(int b, int spot) {
      if (!lies[b].containsKey(spot)) {
        BoolVar here = model.newBoolVar("");
        lies[b].put(spot, here);
        costMs.addTerm(here, board.placeMs[b][spot]);
        model.addHint(here, start[b] == spot);
      }
    }

    private void exclusions() {
      Map<Integer, BoolVar> used = new HashMap<>();
      for (int b = 0; b < n; b++) {
        lies[b].forEach(
            (spot, here) ->
                model.addImplication(here, used.computeIfAbsent(spot, s -> model.newBoolVar(""))));
      }
      used.forEach(
          (spot, there) -> {
            for (int other : board.excludes[spot]) {
              if (other > spot && used.containsKey(other)) {
                model.addAtMostOne(new Literal[] {there, used.get(other)});
              }
            }
          });
    }

    /** On one spot one of the two lies beneath the other; else neither does. */
    private void pair(int a, int b) {
      beneath[a][b] = mayBear(a, b) ? model.newBoolVar("") : model.falseLiteral();
      beneath[b][a] = mayBear(b, a) ? model.newBoolVar("") : model.falseLiteral();
      model.addAtMostOne(new Literal[] {beneath[a][b], beneath[b][a]});
      lies[a].forEach(
          (spot, here) -> {
            Literal other = lies[b].getOrDefault(spot, model.falseLiteral());
            model.addBoolOr(new Literal[] {here.not(), other.not(), beneath[a][b], beneath[b][a]});
            model.addBoolOr(new Literal[] {here.not(), beneath[a][b].not(), other});
            model.addBoolOr(new Literal[] {here.not(), beneath[b][a].not(), other});
          });
    }

    private boolean mayBear(int lower, int upper) {
      return board.bundles.get(upper).lengthM() - board.bundles.get(lower).lengthM()
              <= 2 * board.endOverhangM + 1e-9
          && board.bundles.get(upper).widthM() - board.bundles.get(lower).widthM()
              <= 2 * board.sideOverhangM + 1e-9;
    }

    private int ownMm(int b) {
      return (int) Math.round((board.bundles.get(b).heightM() + board.bearerM) * MM_PER_M);
    }

    /** Its base is as high as all beneath it together; picking is priced by a table of heights. */
    private void height(int b) {
      baseMm[b] = model.newIntVar(0, Math.max(0, mostMm - ownMm(b)), "");
      LinearExprBuilder sum = LinearExpr.newBuilder();
      for (int j = 0; j < n; j++) {
        if (j != b) {
          sum.addTerm(beneath[j][b], ownMm(j));
        }
      }
      model.addEquality(baseMm[b], sum);
      long[] pickMs = new long[mostMm + 1];
      for (int mm = 0; mm <= mostMm; mm++) {
        pickMs[mm] = board.pickMs(b, mm / MM_PER_M + board.bearerM);
      }
      IntVar pick = model.newIntVar(0, Arrays.stream(pickMs).max().orElse(0), "");
      model.addElement(baseMm[b], pickMs, pick);
      costMs.add(pick);
    }

    /** What is pulled from beneath before it, and whether something beneath comes later. */
    private void work(int b) {
      int most = board.bundles.get(b).pieces().size();
      IntVar rehandleMs = model.newIntVar(0, board.time.rehandleMs(most), "");
      BoolVar setDown = model.newBoolVar("");
      for (int j = 0; j < n; j++) {
        if (j == b) {
          continue;
        }
        int later = board.digging[b].laterThan(board.digging[j].first);
        model.addGreaterOrEqual(
            rehandleMs, LinearExpr.term(beneath[j][b], board.time.rehandleMs(later)));
        if (board.turn[j] > board.turn[b]) {
          model.addImplication(beneath[j][b], setDown);
        }
      }
      costMs.add(rehandleMs);
      costMs.addTerm(setDown, board.time.liftMs(0));
    }

    /** No stack is too high above any of its bundles for that bundle's width. */
    private void slenderness() {
      double times = Arrays.stream(board.mostSlender).min().orElse(0);
      for (int a = 0; a < n; a++) {
        double narrowM = Math.min(board.bundles.get(a).lengthM(), board.bundles.get(a).widthM());
        int mostAboveMm = (int) Math.floor((times * narrowM + board.bearerM) * MM_PER_M);
        for (int b = 0; b < n; b++) {
          if (a != b) {
            LinearExprBuilder apart = LinearExpr.newBuilder();
            apart.add(baseMm[b]).addTerm(baseMm[a], -1);
            model.addLessOrEqual(apart, mostAboveMm - ownMm(b)).onlyEnforceIf(beneath[a][b]);
          }
        }
      }
    }

    int[] solve(long seed, double processorS) {
      CpSolver solver = new CpSolver();
      if (!exact.solve(model, solver, seed, processorS)) {
        return start;
      }
      int[] found = new int[n];
      for (int b = 0; b < n; b++) {
        found[b] =
            lies[b].entrySet().stream()
                .filter(place -> solver.booleanValue(place.getValue()))
                .mapToInt(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
      }
      return found;
    }
  }
}
