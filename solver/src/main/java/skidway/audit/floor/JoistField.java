package skidway.audit.floor;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import skidway.site.Deck;
import skidway.site.Joists;
import skidway.site.Point;

/**
 * The joists under a deck, and what each of them gets of the loads on it. A joist gets what lies
 * nearer to it than to any other; the subfloor, which spreads loads further, is not counted.
 *
 * <pre>
 *   across
 *     |    ===|=======|===   joist k + 1       = joist
 *     |       |   +   |    - - - - - - -       | line of support
 *     |    ===|===+===|===   joist k           + bearer: most of it goes to joist k
 *     |       |   +   |    - - - - - - -
 *     +------------------ along
 * </pre>
 */
public final class JoistField {
  /** Shorter loads count as points, so that nothing is divided by next to nothing. */
  private static final double POINT_M = 0.001;

  private static final double ROUNDING = 1e-9;

  private final Point along;
  private final Point across;
  private final double spacingM;
  private final double[] joistsM;
  private final double[] supportsM;

  private JoistField(Deck deck, Joists joists) {
    along = Point.unit(joists.directionDeg());
    across = along.turnedLeft();
    spacingM = joists.spacingM();
    joistsM = joistsM(deck, joists.first().dot(across));
    supportsM = joists.supports().stream().mapToDouble(p -> p.dot(along)).sorted().toArray();
  }

  public static JoistField of(Deck deck, Joists joists) {
    return new JoistField(deck, joists);
  }

  /** Where each joist lies across the deck; under a deck narrower than the spacing the nearest. */
  private double[] joistsM(Deck deck, double firstM) {
    double[] cornersM =
        deck.outline().corners().stream().mapToDouble(p -> p.dot(across)).sorted().toArray();
    double lowest = (cornersM[0] - firstM) / spacingM;
    double highest = (cornersM[cornersM.length - 1] - firstM) / spacingM;
    double first = Math.ceil(lowest - ROUNDING);
    int count = (int) (Math.floor(highest + ROUNDING) - first) + 1;
    return count < 1
        ? new double[] {firstM + Math.rint((lowest + highest) / 2) * spacingM}
        : DoubleStream.iterate(first, k -> k + 1)
            .limit(count)
            .map(k -> firstM + k * spacingM)
            .toArray();
  }

  /** Every span that gets a part of the loads. */
  public List<LoadedSpan> loaded(List<LineLoad> lines) {
    List<LoadedSpan> spans = new ArrayList<>();
    for (int joist = 0; joist < joistsM.length; joist++) {
      for (int support = 1; support < supportsM.length; support++) {
        loaded(lines, joist, supportsM[support - 1], supportsM[support]).ifPresent(spans::add);
      }
    }
    return spans;
  }

  private Optional<LoadedSpan> loaded(List<LineLoad> lines, int joist, double startM, double endM) {
    List<EvenLoad> loads = new ArrayList<>();
    Set<String> spotIds = new HashSet<>();
    for (LineLoad line : lines) {
      onJoist(line, joist)
          .flatMap(load -> load.within(startM, endM))
          .ifPresent(
              load -> {
                loads.add(load);
                spotIds.add(line.spotId());
              });
    }
    Point middle = along.times((startM + endM) / 2).plus(across.times(joistsM[joist]));
    return loads.isEmpty() || endM - startM < POINT_M
        ? Optional.empty()
        : Optional.of(new LoadedSpan(new SimpleSpan(endM - startM, loads), middle, spotIds));
  }

  /** The part of a line that is nearest to a joist, as it lies along the joist. */
  private Optional<EvenLoad> onJoist(LineLoad line, int joist) {
    double lowM = joist == 0 ? Double.NEGATIVE_INFINITY : borderM(joist - 1);
    double highM = joist == joistsM.length - 1 ? Double.POSITIVE_INFINITY : borderM(joist);
    double fromM = line.from().dot(across);
    double riseM = line.to().dot(across) - fromM;
    if (Math.abs(riseM) < ROUNDING) {
      boolean here = fromM >= lowM && fromM < highM;
      return here ? Optional.of(along(line, 0, 1)) : Optional.empty();
    }
    double low = shareOfOne((lowM - fromM) / riseM);
    double high = shareOfOne((highM - fromM) / riseM);
    return low == high
        ? Optional.empty()
        : Optional.of(along(line, Math.min(low, high), Math.max(low, high)));
  }

  /**
   * Halfway to the next joist; one figure for both, so that rounding leaves no gap between them.
   */
  private double borderM(int joist) {
    return joistsM[joist] + spacingM / 2;
  }

  /** A part of a line, from one share of its length to another. */
  private EvenLoad along(LineLoad line, double from, double to) {
    double startM = line.from().dot(along);
    double wayM = line.to().dot(along) - startM;
    double a = startM + from * wayM;
    double b = startM + to * wayM;
    double newtons = line.newtons() * (to - from);
    return Math.abs(b - a) < POINT_M
        ? EvenLoad.point((a + b) / 2, newtons)
        : new EvenLoad(Math.min(a, b), Math.max(a, b), newtons);
  }

  private static double shareOfOne(double share) {
    return Math.max(0, Math.min(1, share));
  }
}
