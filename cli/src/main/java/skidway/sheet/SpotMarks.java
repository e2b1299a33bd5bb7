package skidway.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Spot;

/**
 * The four corners of a spot as they are marked: 1 and 2 on the open side, then on round.
 *
 * @param fixes where two tapes meet; empty for a corner that none find well
 */
record SpotMarks(Spot spot, boolean waiting, List<Optional<TapeFix>> fixes) {
  static SpotMarks of(Spot spot, boolean waiting, List<Reference> references, TapeSight sight) {
    return new SpotMarks(spot, waiting, TapeFix.best(corners(spot), references, sight));
  }

  static List<Point> corners(Spot spot) {
    List<Point> corners = new ArrayList<>(spot.footprint().outline().corners());
    Collections.rotate(corners, spot.openSide() == OpenSide.LEFT ? 2 : 0);
    return corners;
  }

  double diagonalM() {
    return Math.hypot(spot.footprint().lengthM(), spot.footprint().widthM());
  }
}
