package skidway.demo;

import static skidway.demo.HouseWall.wall;

import java.util.List;
import java.util.Map;
import skidway.demo.HouseWall.Opening;
import skidway.site.Starter;

/** Describes the L-shaped house: 44 by 32 ft with a bite of 18 by 16 ft, in inches. */
final class LHouse {
  private static final int SILL = 24;
  private static final int HEAD = 80;

  /** In walls with a half starter, joints lie half a course higher, and so do the openings. */
  private static final int HALF = 4;

  private LHouse() {}

  static DemoJob job() {
    return new DemoJob(
        "l-house",
        new House(Ruler.INCHES, walls(), 8, 16, 6, ft(16), 24, 12, "lodgepole pine", 19),
        new Bundling(
            8,
            Map.of("W1", 1, "W2", 1, "W3", 2, "W4", 2, "W5", 3, "W6", 3),
            List.of(ft(4), ft(8), ft(12), ft(16)),
            4,
            3,
            9,
            20310505),
        LHouseText.JOB,
        LHouseText.SITE,
        LHouseText.LOADS,
        LHouseText.ABOUT);
  }

  private static List<HouseWall> walls() {
    return List.of(
        wall(
            "W1",
            ft(30),
            ft(28),
            ft(74),
            ft(28),
            Starter.FULL,
            window("N1", 5, 3, 0),
            window("N2", 13, 3, 0),
            door("front door", 20),
            window("N3", 29, 3, 0),
            window("N4", 37, 3, 0)),
        wall(
            "W2",
            ft(74),
            ft(28),
            ft(74),
            ft(44),
            Starter.HALF,
            window("N5", 3, 3, HALF),
            window("N6", 10, 3, HALF)),
        wall(
            "W3",
            ft(74),
            ft(44),
            ft(56),
            ft(44),
            Starter.FULL,
            door("back door", 4),
            window("N7", 11, 3, 0)),
        wall("W4", ft(56), ft(44), ft(56), ft(60), Starter.HALF, window("N8", 6, 4, HALF)),
        wall(
            "W5",
            ft(56),
            ft(60),
            ft(30),
            ft(60),
            Starter.FULL,
            window("N9", 5, 3, 0),
            window("N10", 12, 3, 0),
            window("N11", 19, 3, 0)),
        wall(
            "W6",
            ft(30),
            ft(60),
            ft(30),
            ft(28),
            Starter.HALF,
            window("N12", 6, 3, HALF),
            window("N13", 14, 4, HALF),
            window("N14", 23, 3, HALF)));
  }

  private static Opening window(String id, int fromFt, int widthFt, int raise) {
    return new Opening(id, false, ft(fromFt), ft(widthFt), SILL + raise, HEAD + raise);
  }

  private static Opening door(String id, int fromFt) {
    return new Opening(id, true, ft(fromFt), ft(3), 0, HEAD);
  }

  private static int ft(int feet) {
    return 12 * feet;
  }
}
