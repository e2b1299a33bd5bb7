package skidway.erection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.site.Point;
import skidway.site.Wall;

/**
 * Where one wall meets another: at a corner, in a T or crossing it.
 *
 * @param atM where it is on the wall's centre line, from the wall's start
 * @param otherAtM the same on the other wall
 */
record Junction(Wall wall, double atM, Wall other, double otherAtM) {
  /** Sine of the angle below which two walls are one run and do not cross (assumption: 10 deg). */
  private static final double SAME_RUN = 0.17;

  /** All junctions, each told once from either side. */
  static List<Junction> of(List<Wall> walls) {
    List<Junction> all = new ArrayList<>();
    for (Wall wall : walls) {
      for (Wall other : walls) {
        if (!wall.id().equals(other.id())) {
          between(wall, other).ifPresent(all::add);
        }
      }
    }
    return all;
  }

  /** A wall that ends at the other's face still meets it: its end may be a thickness short. */
  private static Optional<Junction> between(Wall wall, Wall other) {
    double sine = wall.along().cross(other.along());
    if (Math.abs(sine) < SAME_RUN) {
      return Optional.empty();
    }
    Point way = other.start().minus(wall.start());
    double atM = way.cross(other.along()) / sine;
    double otherAtM = way.cross(wall.along()) / sine;
    double shortM = Math.max(wall.thicknessM(), other.thicknessM());
    boolean meet = isOn(wall, atM, shortM) && isOn(other, otherAtM, shortM);
    return meet ? Optional.of(new Junction(wall, atM, other, otherAtM)) : Optional.empty();
  }

  private static boolean isOn(Wall wall, double atM, double shortM) {
    return atM > -shortM && atM < wall.lengthM() + shortM;
  }

  /** Whether a piece of the wall goes through the junction or ends at the other wall's face. */
  boolean isReachedBy(Placement p) {
    double shortM = other.thicknessM();
    return p.fromM() < atM + shortM && p.toM() > atM - shortM;
  }

  /** The same place seen from the other wall. */
  @SuppressWarnings("ArgumentSelectionDefectChecker") // turned on purpose
  Junction turned() {
    return new Junction(other, otherAtM, wall, atM);
  }
}
