package skidway.limits;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Joists;
import skidway.site.Outline;
import skidway.site.Point;

/**
 * The joists of a deck as numbered lines, cut into spans by their supports, and which of them bears
 * what.
 *
 * <pre>
 *          span 0        span 1
 *   |---------------|-------------|   joist 1
 *   |     ==[bearer]==            |
 *   |---------------|-------------|   joist 0
 * support        support       support     t: along the joists →, u: across them ↑
 * </pre>
 *
 * <p>A joist bears what lies nearer to it than to the next, the outermost also what lies beyond.
 * What lies beyond the outermost supports loads no span. A line just halfway between two joists
 * counts in full for both, a point on a support for both spans: on the safe side, and rounding
 * decides nothing.
 */
public final class JoistGrid {
  /** Nearer than this is the same place; beams and joists are not set out finer. */
  private static final double SAME_M = 1e-6;

  /** Of a spacing: a joist this near beyond the deck's edge is under the edge. */
  private static final double ROUNDING = 1e-9;

  /** Shorter loads count as points. */
  private final Point along;

  private final Point across;
  private final double spacingM;
  private final double firstM;
  private final int joists;
  private final double[] supportsM;

  private JoistGrid(Joists joists, Outline deck) {
    along = Point.unit(joists.directionDeg());
    across = along.turnedLeft();
    spacingM = joists.spacingM();
    double knownM = joists.first().dot(across);
    double[] cornersM = deck.corners().stream().mapToDouble(c -> c.dot(across)).sorted().toArray();
    double lowest = Math.ceil((cornersM[0] - knownM) / spacingM - ROUNDING);
    double highest = Math.floor((cornersM[cornersM.length - 1] - knownM) / spacingM + ROUNDING);
    firstM = knownM + lowest * spacingM;
    this.joists = (int) Math.max(1, highest - lowest + 1);
    supportsM = joists.supports().stream().mapToDouble(s -> s.dot(along)).sorted().toArray();
  }

  /** The joists under a deck; one at least. */
  public static JoistGrid of(Joists joists, Outline deck) {
    return new JoistGrid(joists, deck);
  }

  public int joists() {
    return joists;
  }

  /** How many spans each joist has. */
  public int spans() {
    return supportsM.length - 1;
  }

  /** Length of a span, metres; the same for all joists. */
  public double spanM(int span) {
    return supportsM[span + 1] - supportsM[span];
  }

  /** What some line loads put on the joists, line by line, then by joist and span. */
  public List<JoistLoad> loads(List<LineLoad> lines) {
    List<JoistLoad> loads = new ArrayList<>();
    lines.forEach(line -> cutAcross(line, loads));
    return loads;
  }

  /** Cuts a line where the next joist is as near. */
  private void cutAcross(LineLoad line, List<JoistLoad> loads) {
    double u0 = line.from().dot(across);
    double u1 = line.to().dot(across);
    double t0 = line.from().dot(along);
    double t1 = line.to().dot(along);
    if (Math.abs(u1 - u0) < SAME_M) {
      double u = (u0 + u1) / 2;
      for (int joist = nearest(u - SAME_M); joist <= nearest(u + SAME_M); joist++) {
        cutAlong(joist, t0, t1, line.share(), loads);
      }
      return;
    }
    int low = nearest(Math.min(u0, u1));
    int high = nearest(Math.max(u0, u1));
    for (int joist = low; joist <= high; joist++) {
      double enter = joist == low ? Math.min(u0, u1) : border(joist - 1);
      double leave = joist == high ? Math.max(u0, u1) : border(joist);
      double tEnter = t0 + (t1 - t0) * (enter - u0) / (u1 - u0);
      double tLeave = t0 + (t1 - t0) * (leave - u0) / (u1 - u0);
      cutAlong(joist, tEnter, tLeave, line.share() * (leave - enter) / Math.abs(u1 - u0), loads);
    }
  }

  /** Cuts a joist's part at its supports. */
  private void cutAlong(int joist, double t0, double t1, double share, List<JoistLoad> loads) {
    double fromM = Math.min(t0, t1);
    double toM = Math.max(t0, t1);
    boolean point = toM - fromM < JoistLoad.POINT_M;
    double middleM = (fromM + toM) / 2;
    for (int span = 0; span < spans(); span++) {
      if (point && !holds(span, middleM)) {
        continue;
      }
      double a = within(span, point ? middleM : fromM);
      double b = within(span, point ? middleM : toM);
      double part = point ? share : share * (b - a) / (toM - fromM);
      if (point || b - a > SAME_M) {
        loads.add(new JoistLoad(joist, span, a, b, part));
      }
    }
  }

  private boolean holds(int span, double t) {
    return t >= supportsM[span] - SAME_M && t <= supportsM[span + 1] + SAME_M;
  }

  /** A place counted from the span's start, brought to the nearer end when it lies outside. */
  private double within(int span, double t) {
    return Math.max(0, Math.min(spanM(span), t - supportsM[span]));
  }

  /** Halfway, the lower number. */
  private int nearest(double u) {
    double number = Math.ceil((u - firstM) / spacingM - 0.5);
    return (int) Math.max(0, Math.min(joists - 1, number));
  }

  /** Halfway from a joist to the next. */
  private double border(int joist) {
    return firstM + (joist + 0.5) * spacingM;
  }
}
