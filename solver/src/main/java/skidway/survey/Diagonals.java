package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import skidway.site.Point;
import skidway.units.Figures;

/**
 * Says how far it is across the house from outside corner to outside corner. Walls of the right
 * lengths may still stand askew; these measures show it.
 */
record Diagonals(Figures figures) {
  /**
   * A sentence for each two neighbouring walls that turn, at most once for the same two corners.
   *
   * @param walls names of the outer walls, in order
   */
  List<String> of(List<String> walls, House house) {
    List<String> all = new ArrayList<>();
    if (house.outside().isEmpty()) {
      return all;
    }
    Ring ring = house.outside().get();
    int count = ring.corners().size();
    int last = count == 4 ? 2 : count; // the other two of four are the same diagonals
    for (int i = 0; i < last && count > 3; i++) {
      Point from = ring.corner(i);
      Point to = ring.corner(i + 2);
      if (Math.abs(ring.along(i).cross(ring.along(i + 1))) > 0.1) {
        all.add(
            String.format(
                Locale.ROOT,
                "Outside corner where %s begins to outside corner where %s ends: %s.",
                walls.get(i),
                walls.get((i + 1) % count),
                figures.length(from.distanceTo(to))));
      }
    }
    return all;
  }
}
