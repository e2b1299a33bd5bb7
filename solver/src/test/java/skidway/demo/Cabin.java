package skidway.demo;

import static skidway.demo.HouseWall.wall;

import java.util.List;
import java.util.Map;
import skidway.demo.HouseWall.Opening;
import skidway.site.Starter;

/** Describes the rectangular cabin: 7.2 by 6 m, in millimetres. */
final class Cabin {
  private Cabin() {}

  static DemoJob job() {
    return new DemoJob(
        "cabin",
        new House(
            Ruler.MILLIMETRES, walls(), 200, 12, 150, 4800, 600, 300, "eastern white pine", 22),
        new Bundling(
            200,
            Map.of("W1", 1, "W2", 1, "W3", 1, "W4", 1),
            List.of(1200, 2400, 3600, 4800),
            4,
            4,
            8,
            20310610),
        CabinText.JOB,
        CabinText.SITE,
        CabinText.LOADS,
        CabinText.ABOUT);
  }

  private static List<HouseWall> walls() {
    return List.of(
        wall(
            "W1",
            10_000,
            12_000,
            17_200,
            12_000,
            Starter.FULL,
            new Opening("door", true, 3000, 1000, 0, 2000)),
        wall(
            "W2",
            17_200,
            12_000,
            17_200,
            18_000,
            Starter.HALF,
            new Opening("N1", false, 2400, 1200, 900, 1900)),
        wall(
            "W3",
            17_200,
            18_000,
            10_000,
            18_000,
            Starter.FULL,
            new Opening("N2", false, 3000, 1200, 1000, 2000)),
        wall("W4", 10_000, 18_000, 10_000, 12_000, Starter.HALF));
  }
}
