package skidway.staging;

import java.util.Arrays;
import java.util.stream.IntStream;
import skidway.bound.Ground;

/** The board as a lower bound sees it: what spots forbid together and what stacks cost. */
final class BoundGround implements Ground {
  private static final int[] NOTHING = {};
  private static final Load NO_LOAD = new Load(new int[0], new double[0]);

  private final Board board;
  private final StackEvaluator evaluator;
  private final boolean tolerant;
  private final boolean[] isHome;

  /** The moment at which most bundles are there. */
  private final int busiest;

  /** By spot, what bundles can take of its height, or of its floor. */
  private final double[] room;

  private final Companions companions;
  private final SharedRows rows;

  /**
   * @param tolerant whether spots that exclude each other may be used together all the same
   */
  BoundGround(Board board, boolean tolerant) {
    this.board = board;
    this.tolerant = tolerant;
    this.evaluator = new StackEvaluator(board, Waits.FREE);
    this.rows = new SharedRows(board);
    this.companions = new Companions(board);
    this.isHome = new boolean[board.spotCount()];
    for (int home : board.home) {
      if (home != Occupancy.NOWHERE) {
        isHome[home] = true;
      }
    }
    this.busiest = busiest(board);
    this.room = new double[board.spotCount()];
    Fullest stack = new Fullest(board.tierM);
    Fullest rack = new Fullest(board.onEndM2);
    Arrays.setAll(
        room, s -> board.rack[s] ? rack.of(board.rackFloorM2[s]) : stack.of(board.mostHeightM[s]));
  }

  private static int busiest(Board board) {
    int busiest = 0;
    long most = -1;
    for (int m = 0; m < board.moments; m++) {
      int moment = m;
      long there =
          IntStream.range(0, board.bundleCount()).filter(b -> board.isThere(b, moment)).count();
      if (there > most) {
        most = there;
        busiest = moment;
      }
    }
    return busiest;
  }

  @Override
  public int bundles() {
    return board.bundleCount();
  }

  @Override
  public int spots() {
    return board.spotCount();
  }

  @Override
  public long there(int bundle) {
    return board.there[bundle];
  }

  @Override
  public long placeMs(int bundle, int spot) {
    return board.placeMs[bundle][spot];
  }

  @Override
  public int[] excludes(int spot) {
    return tolerant ? NOTHING : board.excludes[spot];
  }

  @Override
  public long leastInStackMs(int bundle, int spot) {
    return board.rack[spot] ? 0 : companions.leastPickMs(bundle);
  }

  /** What lies there from the start may be higher than it should. */
  @Override
  public double room(int spot) {
    return isHome[spot] ? Double.POSITIVE_INFINITY : room[spot];
  }

  @Override
  public double takes(int bundle, int spot) {
    if (!board.isThere(bundle, busiest)) {
      return 0;
    }
    return board.rack[spot] ? board.onEndM2[bundle] : board.tierM[bundle];
  }

  @Override
  public long onTopMs(int beneath, int bundle, int spot) {
    return board.rack[spot] || isHome[spot] ? 0 : companions.onTopMs(beneath, bundle);
  }

  @Override
  public boolean mayGrow(int[] set, int size, int spot) {
    return staysHome(set, size, spot)
        || (board.rack[spot]
            ? board.rackHolds(set, size, spot)
            : !evaluator.isTooMuch(set, size, spot));
  }

  private boolean staysHome(int[] set, int size, int spot) {
    for (int i = 0; i < size; i++) {
      if (board.home[set[i]] != spot) {
        return false;
      }
    }
    return isHome[spot];
  }

  @Override
  public long stackMs(int[] set, int size, int spot) {
    if (board.rack[spot]) {
      return 0;
    }
    StackCost cost = evaluator.best(set, size, spot);
    boolean legal =
        cost.legal() && !(sums() > 0 && !isHome[spot] && breaksAlone(set, size, spot, cost));
    return legal ? cost.totalMs() : REFUSED;
  }

  private boolean breaksAlone(int[] set, int size, int spot, StackCost cost) {
    double massKg = 0;
    for (int i = 0; i < size; i++) {
      massKg += board.massKg[set[i]];
    }
    return rows.isTooMuch(spot, cost.order().get(0), massKg);
  }

  @Override
  public int sums() {
    return tolerant || board.moments > 1 ? 0 : rows.count();
  }

  /** What lies somewhere from the start may lie on other bearers than would be laid for it. */
  @Override
  public Load load(int spot, int lowest) {
    return isHome[spot] ? NO_LOAD : rows.of(spot, lowest);
  }

  @Override
  public int sizeOf(int bundle) {
    return board.sizeOf(bundle);
  }

  @Override
  public double massKg(int bundle) {
    return board.massKg[bundle];
  }

  @Override
  public int lowest(int[] set, int size, int spot) {
    return board.rack[spot] ? set[0] : evaluator.best(set, size, spot).order().get(0);
  }
}
