package skidway.erection;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import skidway.site.Wall;
import skidway.site.WallOpening;

/**
 * What each piece of one wall bears on.
 *
 * <p>Seen from a piece straight down, it bears on the uppermost piece at every place along it. Over
 * a door or window nothing is directly below: there it is carried by what lies at the sides, as a
 * header is, and does not wait for the sill. Only a piece with nothing at its sides either waits
 * for what comes next below the opening. Any other gap, as left by a piece that the packing list
 * lacks, is looked through to the next piece below, so that nothing is called layable for want of
 * data.
 */
final class Bearing {
  private final Wall wall;
  private final double courseM;
  private final NavigableMap<Long, List<Placement>> levels = new TreeMap<>();

  /**
   * @param pieces all pieces of the wall
   */
  Bearing(Wall wall, double courseM, Collection<Placement> pieces) {
    this.wall = wall;
    this.courseM = courseM;
    for (Placement p : pieces) {
      levels.computeIfAbsent(p.levelMm(), l -> new ArrayList<>()).add(p);
    }
  }

  /** The pieces of the same wall that this one bears on, all of a lower level. */
  List<Placement> of(Placement upper) {
    List<Placement> bearing = new ArrayList<>();
    List<Placement> underOpenings = new ArrayList<>();
    List<Span> open = List.of(span(upper));
    for (List<Placement> level : levels.headMap(upper.levelMm(), false).descendingMap().values()) {
      List<Span> stillOpen = open;
      for (Placement lower : level) {
        List<Span> met = meet(open, span(lower));
        if (!met.isEmpty()) {
          (carries(lower, upper, met) ? bearing : underOpenings).add(lower);
          stillOpen = without(stillOpen, span(lower));
        }
      }
      open = stillOpen;
      if (open.isEmpty()) {
        break;
      }
    }
    return bearing.isEmpty() ? underOpenings : bearing;
  }

  private boolean carries(Placement lower, Placement upper, List<Span> met) {
    if (isNextBelow(lower, upper, courseM)) {
      return true;
    }
    List<Span> left = met;
    for (WallOpening opening : wall.openings()) {
      if (opening.headM() > lower.topM() && opening.sillM() < upper.bottomM()) {
        double edge = WallPlan.EDGE_TOLERANCE_M;
        left = without(left, new Span(opening.fromM() - edge, opening.toM() + edge));
      }
    }
    return !left.isEmpty();
  }

  /**
   * Whether a lower piece is at most half a course short of the upper one: scribed timbers are
   * higher than their course, and with half starters a crossing timber's top lies half a course
   * higher than the timber that is let in over it.
   */
  static boolean isNextBelow(Placement lower, Placement upper, double courseM) {
    return lower.topM() > upper.bottomM() - courseM / 2 - Span.SLIVER_M;
  }

  private static List<Span> meet(List<Span> open, Span span) {
    return open.stream().map(o -> o.shared(span)).filter(Span::counts).toList();
  }

  private static List<Span> without(List<Span> open, Span span) {
    return open.stream().flatMap(o -> o.without(span).stream()).toList();
  }

  private static Span span(Placement p) {
    return new Span(p.fromM(), p.toM());
  }
}
