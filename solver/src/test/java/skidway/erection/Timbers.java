package skidway.erection;

import java.util.OptionalDouble;
import skidway.testkit.BundleBuilder;
import skidway.timber.Moisture;
import skidway.timber.Piece;
import skidway.timber.Section;

/** Makes loose timbers of 0.15 by 0.2 m for tests of their order and place. */
final class Timbers {
  private Timbers() {}

  static Piece timber(String wall, int course, int position, double lengthM) {
    return timber(wall, course, position, lengthM, OptionalDouble.empty());
  }

  static Piece timberFrom(String wall, int course, int position, double lengthM, double fromLeftM) {
    return timber(wall, course, position, lengthM, OptionalDouble.of(fromLeftM));
  }

  private static Piece timber(
      String wall, int course, int position, double lengthM, OptionalDouble fromLeftM) {
    return new Piece(
        wall + "-" + course + "-" + position,
        wall,
        course,
        position,
        fromLeftM,
        lengthM,
        new Section(0.15, 0.2, 1),
        BundleBuilder.TEST_WOOD,
        Moisture.of(0),
        OptionalDouble.empty());
  }
}
