package skidway.staging;

import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.door;
import static skidway.testkit.SiteBuilder.wall;
import static skidway.testkit.Tasks.task;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import skidway.plan.Task;
import skidway.site.ChartRow;
import skidway.site.Footprint;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Starter;
import skidway.site.TruckStand;
import skidway.site.Yard;
import skidway.testkit.BundleBuilder;
import skidway.timber.Bundle;

/**
 * Invented jobs of any size: a house between two yards that are just large enough for the bundles,
 * with a stand of the machine every 15 m.
 */
final class Invented {
  /** Ground for each bundle, m²: stacks of three or so, and the strips in front of them. */
  private static final double GROUND_M2 = 7;

  /** Side of the house for each bundle, m: some two dozen courses of pieces end to end. */
  private static final double HOUSE_SIDE_M = 0.3;

  private static final int COURSES = 24;
  private static final int BUNDLES_A_LOAD = 12;
  private static final double STANDS_APART_M = 15;

  private Invented() {}

  static Task job(int bundles, long seed) {
    Random random = new Random(seed);
    int[] next = new int[5];
    Bundle[] all =
        IntStream.range(0, bundles).mapToObj(b -> bundle(b, random, next)).toArray(Bundle[]::new);
    return task(site(bundles), all);
  }

  /** Some pieces for a wall or two and a few courses, as a mill packs them. */
  private static Bundle bundle(int number, Random random, int[] next) {
    double lengthM = 2 + random.nextInt(6) * 0.5;
    BundleBuilder bundle =
        aBundle("B" + (number + 1))
            .load(String.format(Locale.ROOT, "L%03d", number / BUNDLES_A_LOAD), number + 1)
            .size(lengthM, 0.6 + random.nextInt(3) * 0.1, 0.3 + random.nextInt(3) * 0.1);
    int wall = 1 + number % 4;
    int pieces = 3 + random.nextInt(7);
    for (int p = 0; p < pieces; p++) {
      int at = random.nextInt(4) == 0 ? 1 + random.nextInt(4) : wall;
      bundle.piece("W" + at, 1 + (5 * number + p) % COURSES, ++next[at], lengthM - 0.3, 1 + p / 3);
    }
    return bundle.build();
  }

  private static Site site(int bundles) {
    double sideM = Math.max(8, bundles * HOUSE_SIDE_M);
    double depthM = Math.max(5, bundles * GROUND_M2 / 2 / (sideM + 10));
    double left = 7;
    double right = left + sideM;
    double front = depthM + 8;
    double back = front + sideM;
    double width = right + 7;
    double height = back + depthM + 4;
    List<Yard> yards =
        List.of(
            new Yard("south", Outline.box(2, 6, width - 2, front - 2), 70),
            new Yard("north", Outline.box(2, back + 2, width - 2, height - 2), 70));
    return new Site(
        "invented site",
        Outline.box(0, 0, width, height),
        90,
        0.15,
        List.of(
            wall("W1", left, front, right, front, Starter.FULL, door("D1", 4, 1.0)),
            wall("W2", right, front, right, back, Starter.HALF),
            wall("W3", right, back, left, back, Starter.FULL),
            wall("W4", left, back, left, front, Starter.HALF)),
        List.of(),
        yards,
        List.of(),
        List.of(),
        List.of(new TruckStand("truck", new Footprint(new Point(width / 2, 3), 0, 12, 2.6))),
        List.of(),
        new Machine(
            "machine",
            stands(width, height),
            List.of(new ChartRow(10, 3000), new ChartRow(20, 2000), new ChartRow(30, 1000))),
        List.of());
  }

  private static List<MachineStand> stands(double width, double height) {
    List<MachineStand> stands = new ArrayList<>();
    for (double y = 5; y < height; y += STANDS_APART_M) {
      for (double x = 5; x < width; x += STANDS_APART_M) {
        stands.add(new MachineStand("M" + (stands.size() + 1), new Point(x, y)));
      }
    }
    return stands;
  }
}
