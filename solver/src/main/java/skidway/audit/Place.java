package skidway.audit;

import skidway.audit.plane.Rectangle;
import skidway.site.Spot;
import skidway.site.SpotKind;

/**
 * A spot that a plan uses, drawn.
 *
 * @param name "stack D3", "rack R1" or "waiting place T1"
 */
record Place(String name, Spot spot, Rectangle footprint, Rectangle strip) {

  static Place ofStack(Spot spot) {
    return of(spot.kind() == SpotKind.RACK ? "rack " : "stack ", spot);
  }

  static Place ofWaiting(Spot spot) {
    return of("waiting place ", spot);
  }

  private static Place of(String kind, Spot spot) {
    return new Place(
        kind + spot.id(), spot, Rectangle.of(spot.footprint()), Rectangle.of(spot.strip()));
  }

  String id() {
    return spot.id();
  }

  /** The name, to begin a sentence with. */
  String capitalName() {
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }
}
