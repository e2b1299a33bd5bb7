package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Point;

/**
 * Corners joined by straight lines, in a drawing's units, y upwards.
 *
 * @param closed whether the drawing joins the last corner with the first
 */
record DrawnOutline(List<Point> corners, boolean closed) {
  /** How far the ends lie apart; 0 when the drawing joins them. */
  double gap() {
    return closed || corners.isEmpty() ? 0 : last().distanceTo(corners.get(0));
  }

  /** Whether its ends lie farther apart than those of taped walls may, as a share of its length. */
  boolean isOpen() {
    return gap() > length() / Closing.USUAL_LEAST;
  }

  private double length() {
    double length = 0;
    for (int i = 1; i < corners.size(); i++) {
      length += corners.get(i).distanceTo(corners.get(i - 1));
    }
    return length;
  }

  /** Each corner once; the end of a line that came back is its beginning. */
  List<Point> ring() {
    List<Point> all =
        closed || corners.isEmpty() ? corners : corners.subList(0, corners.size() - 1);
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (!all.get(i).equals(all.get((i + 1) % all.size()))) {
        ring.add(all.get(i));
      }
    }
    return ring;
  }

  private Point last() {
    return corners.get(corners.size() - 1);
  }
}
