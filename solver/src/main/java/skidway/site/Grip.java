package skidway.site;

import java.util.OptionalDouble;

/** How a machine holds a bundle. */
public sealed interface Grip {
  /**
   * On forks, crosswise: it travels as wide as the bundle is long.
   *
   * @param loadCentreM distance from the fork's face for which the chart holds, when its plate says
   *     so
   */
  record Forks(OptionalDouble loadCentreM) implements Grip {}

  /**
   * In two slings from a hook, lengthwise.
   *
   * @param angleDeg of each sling from the horizontal, when known
   * @param legKg what one sling is rated for when it hangs straight, when known
   */
  record Slings(OptionalDouble angleDeg, OptionalDouble legKg) implements Grip {}

  /** Nobody said how. */
  record Unstated() implements Grip {}
}
