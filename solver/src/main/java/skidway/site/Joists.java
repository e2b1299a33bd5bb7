package skidway.site;

import java.util.List;

/**
 * The joists under a deck: parallel, evenly spaced, each lying on straight supports. Between two
 * neighbouring supports a joist counts as a simple span, though it may run on.
 *
 * @param directionDeg the way they run, degrees counter-clockwise from the x axis
 * @param spacingM from the middle of one joist to the next
 * @param first a point on one of them
 * @param supports a point on each line of support, beam or wall, square to the joists
 * @param design what each of them can bear
 */
public record Joists(
    double directionDeg, double spacingM, Point first, List<Point> supports, JoistDesign design) {
  public Joists {
    supports = List.copyOf(supports);
    if (supports.size() < 2) {
      throw new IllegalArgumentException("Joists need 2 supports, found " + supports.size());
    }
  }
}
