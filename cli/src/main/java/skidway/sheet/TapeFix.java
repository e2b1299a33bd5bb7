package skidway.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import skidway.site.Point;
import skidway.site.Wall;

/**
 * A point marked by two tapes: it is where they meet on the left of the way from the first
 * reference to the second. On the other side they meet a second time.
 */
record TapeFix(Point corner, Reference first, Reference second) {
  /** Flatter than this, half an inch on a tape is more than an inch on the ground. */
  private static final double LEAST_DEG = 30;

  /** Nearer to the line through both, the two places where the tapes meet are easily confused. */
  private static final double LEAST_OFF_LINE_M = 0.3;

  /** A metre of tape more is as bad as so many degrees further from square. */
  private static final double DEG_PER_METRE = 2;

  /** Of so many references nearest to a spot two often serve, and then few others can do better. */
  private static final int NEAREST = 8;

  /** The best two references for a corner, unless all would cut badly. */
  static Optional<TapeFix> best(Point corner, List<Reference> references, TapeSight sight) {
    return bestForAll(List.of(corner), references, sight).map(fixes -> fixes.get(0));
  }

  /**
   * The corners of one spot: all from the same two references if any two serve, so that the tapes
   * stay hooked, else each from its own.
   */
  static List<Optional<TapeFix>> best(
      List<Point> corners, List<Reference> references, TapeSight sight) {
    return bestForAll(corners, references, sight)
        .map(fixes -> fixes.stream().map(Optional::of).toList())
        .orElseGet(() -> corners.stream().map(c -> best(c, references, sight)).toList());
  }

  private static Optional<List<TapeFix>> bestForAll(
      List<Point> corners, List<Reference> references, TapeSight sight) {
    List<Reference> seen =
        references.stream()
            .filter(r -> corners.stream().allMatch(c -> sight.isClear(r.at(), c)))
            .toList();
    List<Reference> nearest =
        seen.stream()
            .sorted(Comparator.comparingDouble(r -> tapesM(r, corners)))
            .limit(NEAREST)
            .toList();
    double most = cheapest(corners, nearest).map(TapeFix::cost).orElse(Double.POSITIVE_INFINITY);
    List<Reference> worthTrying =
        seen.stream().filter(r -> DEG_PER_METRE * tapesM(r, corners) <= most).toList();
    return cheapest(corners, worthTrying);
  }

  private static double tapesM(Reference reference, List<Point> corners) {
    return corners.stream().mapToDouble(reference.at()::distanceTo).sum();
  }

  private static Optional<List<TapeFix>> cheapest(List<Point> corners, List<Reference> seen) {
    return pairs(seen)
        .map(pair -> corners.stream().map(c -> leftOf(c, pair[0], pair[1])).toList())
        .filter(fixes -> fixes.stream().allMatch(TapeFix::good))
        .min(Comparator.comparingDouble(TapeFix::cost));
  }

  private static double cost(List<TapeFix> fixes) {
    return fixes.stream().mapToDouble(TapeFix::cost).sum();
  }

  /** Whether any two references serve for a corner. */
  static boolean any(Point corner, List<Reference> references, TapeSight sight) {
    return pairs(references).anyMatch(pair -> serve(corner, pair[0], pair[1], sight));
  }

  /** Whether these two serve. */
  static boolean serve(Point corner, Reference a, Reference b, TapeSight sight) {
    return leftOf(corner, a, b).good()
        && sight.isClear(a.at(), corner)
        && sight.isClear(b.at(), corner);
  }

  private static Stream<Reference[]> pairs(List<Reference> references) {
    return IntStream.range(0, references.size())
        .boxed()
        .flatMap(
            i ->
                IntStream.range(0, i)
                    .mapToObj(j -> new Reference[] {references.get(j), references.get(i)}));
  }

  private static TapeFix leftOf(Point corner, Reference a, Reference b) {
    TapeFix fix = new TapeFix(corner, a, b);
    return fix.leftM() >= 0 ? fix : new TapeFix(corner, b, a);
  }

  boolean good() {
    return angleDeg() >= LEAST_DEG && angleDeg() <= 180 - LEAST_DEG && leftM() >= LEAST_OFF_LINE_M;
  }

  double firstM() {
    return first.at().distanceTo(corner);
  }

  double secondM() {
    return second.at().distanceTo(corner);
  }

  /** Between the tapes, where they meet. */
  double angleDeg() {
    Point a = first.at().minus(corner);
    Point b = second.at().minus(corner);
    return Math.toDegrees(
        Math.abs(Math.atan2(a.x() * b.y() - a.y() * b.x(), a.x() * b.x() + a.y() * b.y())));
  }

  /** "inside W1" or "outside W1", when both references are at the ends of that wall. */
  Optional<String> sideOf(Wall wall) {
    boolean along = at(wall.start(), first) && at(wall.end(), second);
    boolean against = at(wall.end(), first) && at(wall.start(), second);
    return along
        ? Optional.of("inside " + wall.id())
        : against ? Optional.of("outside " + wall.id()) : Optional.empty();
  }

  private static boolean at(Point end, Reference reference) {
    return reference.at().distanceTo(end) < ReferenceCorners.MEETS_M;
  }

  private double cost() {
    return Math.abs(angleDeg() - 90) + DEG_PER_METRE * (firstM() + secondM());
  }

  /** Distance from the line through both references, to its left. */
  private double leftM() {
    Point way = second.at().minus(first.at());
    Point to = corner.minus(first.at());
    return way.length() > 0 ? (way.x() * to.y() - way.y() * to.x()) / way.length() : 0;
  }
}
