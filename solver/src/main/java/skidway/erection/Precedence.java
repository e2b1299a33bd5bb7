package skidway.erection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import skidway.site.Site;
import skidway.site.Wall;

/**
 * Which pieces have to be laid before which. A piece needs
 *
 * <ul>
 *   <li>what it bears on, on its own wall ({@link Bearing});
 *   <li>wherever its wall meets another, the other wall's piece just below: the crossing timbers
 *       lie over each other in turns, so neither gets under the other later ({@link Corners}).
 * </ul>
 *
 * <p>Both are common practice; a fixing that asks for more, such as a rod through several courses
 * or a tenon between two timbers of one course, is not known here. What a piece needs always lies
 * lower and so comes before it in the {@link PullOrder}: there are no circles, and the pull order
 * itself is one way to do it.
 */
public final class Precedence {
  private final PullOrder order;
  private final double courseM;
  private final Map<String, List<Placement>> byWall = new HashMap<>();

  /** What each piece needs, both by pull index. */
  private final List<SortedSet<Integer>> needs;

  private Precedence(PullOrder order, double courseM) {
    this.order = order;
    this.courseM = courseM;
    this.needs =
        Stream.<SortedSet<Integer>>generate(TreeSet::new).limit(order.placements().size()).toList();
    for (Placement p : order.placements()) {
      byWall.computeIfAbsent(p.wall().id(), w -> new ArrayList<>()).add(p);
    }
  }

  /** Where walls interlock wherever they meet. */
  public static Precedence of(Site site, PullOrder order) {
    return of(site, order, Corners.INTERLOCKED);
  }

  public static Precedence of(Site site, PullOrder order, Corners corners) {
    Precedence precedence = new Precedence(order, site.courseM());
    site.walls().forEach(precedence::bear);
    if (corners == Corners.INTERLOCKED) {
      Junction.of(site.walls()).forEach(precedence::interlock);
    }
    return precedence;
  }

  private void bear(Wall wall) {
    Bearing bearing = new Bearing(wall, courseM, piecesOf(wall));
    for (Placement upper : piecesOf(wall)) {
      bearing.of(upper).forEach(lower -> add(upper, lower));
    }
  }

  private void interlock(Junction junction) {
    NavigableMap<Long, List<Placement>> crossing = new TreeMap<>();
    piecesOf(junction.other()).stream()
        .filter(junction.turned()::isReachedBy)
        .forEach(p -> crossing.computeIfAbsent(p.levelMm(), l -> new ArrayList<>()).add(p));
    for (Placement upper : piecesOf(junction.wall())) {
      Map.Entry<Long, List<Placement>> below = crossing.lowerEntry(upper.levelMm());
      if (below != null && junction.isReachedBy(upper)) {
        below.getValue().stream()
            .filter(lower -> Bearing.isNextBelow(lower, upper, courseM))
            .forEach(lower -> add(upper, lower));
      }
    }
  }

  private void add(Placement upper, Placement lower) {
    needs.get(order.indexOf(upper.piece())).add(order.indexOf(lower.piece()));
  }

  private List<Placement> piecesOf(Wall wall) {
    return byWall.getOrDefault(wall.id(), List.of());
  }

  /** The order that keeps it. */
  public PullOrder order() {
    return order;
  }

  /** What a piece lies on, by pull index; what those need in turn is not listed. */
  public List<Placement> needs(Placement piece) {
    return needs(order.indexOf(piece.piece())).stream().map(order.placements()::get).toList();
  }

  /** The same by pull index. */
  SortedSet<Integer> needs(int index) {
    return needs.get(index);
  }
}
