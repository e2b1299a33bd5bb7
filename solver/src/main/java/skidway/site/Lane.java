package skidway.site;

import java.util.List;

/** A walking or driving path that stays clear: its centre line and full width. */
public record Lane(String id, List<Point> centreLine, double widthM) {
  public Lane {
    centreLine = List.copyOf(centreLine);
    if (centreLine.size() < 2) {
      throw new IllegalArgumentException(
          "A lane needs at least 2 points, found " + centreLine.size());
    }
  }
}
