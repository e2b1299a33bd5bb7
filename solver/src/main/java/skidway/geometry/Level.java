package skidway.geometry;

import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import skidway.site.Point;

/**
 * A surface people stand on, on the {@link Grid}: the ground, or the decks of one height. From one
 * level to another people get over steps only.
 */
final class Level {
  private final double heightM;
  private final boolean ground;
  private final Geometry surface;
  private final IndexedPointInAreaLocator locator;

  private Level(double heightM, boolean ground, Geometry surface) {
    this.heightM = heightM;
    this.ground = ground;
    this.surface = surface;
    locator = new IndexedPointInAreaLocator(surface);
  }

  static Level ground(Geometry surface) {
    return new Level(0, true, surface);
  }

  static Level decks(double heightM, Geometry surface) {
    return new Level(heightM, false, surface);
  }

  double heightM() {
    return heightM;
  }

  boolean isGround() {
    return ground;
  }

  Geometry surface() {
    return surface;
  }

  /** Whether a point lies on the surface or its edge, obstacles not counted. */
  boolean holds(Point point) {
    return !surface.isEmpty() && locator.locate(Grid.coordinate(point)) != Location.EXTERIOR;
  }
}
