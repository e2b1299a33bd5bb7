package skidway.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Writes the job of a large house: four walls, 30 by 24 m, 20 courses high, of some 1,500 timbers
 * in 60 bundles on four trucks, mixed over six courses as a mill would band them.
 */
final class LargeHouse {
  private static final int BUNDLES = 60;
  private static final int SIDE_BY_SIDE = 5;
  private static final int LOADS = 4;
  private static final int COURSES = 20;
  private static final double TIMBER_M = 1.44;

  private static final String SITE =
      """
      {"format": 1, "name": "Large", "north": 90, "course": 0.2,
       "boundary": [[0, 0], [80, 0], [80, 75], [0, 75]],
       "walls": [
        {"id": "W1", "from": [20, 30], "to": [50, 30], "thickness": 0.15, "starter": "full",
         "openings": [{"id": "door", "kind": "door", "from": 0, "width": 1.2, "sill": 0, "head": 2}]},
        {"id": "W2", "from": [50, 30], "to": [50, 54], "thickness": 0.15, "starter": "half"},
        {"id": "W3", "from": [50, 54], "to": [20, 54], "thickness": 0.15, "starter": "full"},
        {"id": "W4", "from": [20, 54], "to": [20, 30], "thickness": 0.15, "starter": "half"}],
       "decks": [],
       "yards": [
        {"id": "south", "outline": [[8, 9], [70, 9], [70, 27], [8, 27]], "allowed": 60},
        {"id": "east", "outline": [[53, 29], [75, 29], [75, 70], [53, 70]], "allowed": 60}],
       "lanes": [], "keepClears": [],
       "truckStands": [
        {"id": "street", "centre": [40, 4], "heading": 0, "length": 12, "width": 2.6}],
       "machine": {"name": "crane", "grip": {"kind": "slings", "angle": 60, "leg": 2000},
        "rigging": 30,
        "stands": [{"id": "M1", "at": [15, 5]}, {"id": "M2", "at": [40, 7.5]},
         {"id": "M3", "at": [65, 7]}, {"id": "M4", "at": [78, 40]}],
        "chart": [{"reach": 10, "capacity": 4000}, {"reach": 20, "capacity": 2500},
         {"reach": 30, "capacity": 1500}]},
       "spots": []}
      """;

  private record Timber(String mark, int wall, int course, int position, double lengthM) {}

  private final Random random = new Random(5);

  private LargeHouse() {}

  /** Into a folder of this name within another. */
  static Path write(Path dir) throws IOException {
    Path job = Files.createDirectories(dir.resolve("large"));
    Files.writeString(job.resolve("site.json"), SITE);
    Files.writeString(
        job.resolve("job.json"),
        "{\"format\": 1, \"name\": \"Large house\", \"units\": \"metric\", \"settings\": {}}");
    new LargeHouse().deliver(job);
    return job;
  }

  private void deliver(Path job) throws IOException {
    List<Timber> timbers = new ArrayList<>();
    for (int wall = 1; wall <= 4; wall++) {
      for (int course = 1; course <= COURSES; course++) {
        // Beside the door, at the wall's left end, up to its head.
        double fromM = wall == 1 && course <= COURSES / 2 ? 1.2 : 0;
        course(timbers, wall, course, fromM, wall % 2 == 1 ? 30 : 24);
      }
    }
    List<Timber> sawn = sawn(timbers);
    StringBuilder pieces =
        new StringBuilder(
            "mark,wall,course,position,length,width,height,species,moisture,bundle,layer\n");
    StringBuilder bundles = new StringBuilder("bundle,load,off_order,length,width,height\n");
    for (int b = 0; b < BUNDLES; b++) {
      List<Timber> part = new ArrayList<>(sawn.subList(from(sawn, b), from(sawn, b + 1)));
      part.sort(Comparator.comparingDouble(Timber::lengthM).reversed());
      bundle(b, part, pieces, bundles);
    }
    StringBuilder loads = new StringBuilder("load,arrival,truck_stand\n");
    for (int load = 1; load <= LOADS; load++) {
      loads.append(String.format(Locale.ROOT, "L%d,2031-05-05T%02d:00,street%n", load, 7 + load));
    }
    Files.writeString(job.resolve("pieces.csv"), pieces);
    Files.writeString(job.resolve("bundles.csv"), bundles);
    Files.writeString(job.resolve("loads.csv"), loads);
  }

  private static int from(List<Timber> sawn, int bundle) {
    return bundle * sawn.size() / BUNDLES;
  }

  private void course(List<Timber> timbers, int wall, int course, double fromM, double toM) {
    int count = (int) Math.round((toM - fromM) / TIMBER_M);
    double leftM = fromM;
    for (int i = 1; i <= count; i++) {
      double jitterM = i == count ? 0 : 0.6 * random.nextDouble() - 0.3;
      double rightM = fromM + (toM - fromM) * i / count + jitterM;
      String mark = String.format(Locale.ROOT, "W%d-%02d-%d", wall, course, i);
      timbers.add(new Timber(mark, wall, course, i, rightM - leftM));
      leftM = rightM;
    }
  }

  /** The mill takes stock as it comes, up to six courses too early or too late. */
  private List<Timber> sawn(List<Timber> timbers) {
    record Turn(double when, Timber timber) {}
    List<Turn> turns = new ArrayList<>();
    timbers.forEach(t -> turns.add(new Turn(t.course() + 6 * random.nextDouble(), t)));
    turns.sort(Comparator.comparingDouble(Turn::when));
    return turns.stream().map(Turn::timber).toList();
  }

  private static void bundle(
      int number, List<Timber> part, StringBuilder pieces, StringBuilder bundles) {
    int inLoad = BUNDLES / LOADS;
    int layers = (part.size() + SIDE_BY_SIDE - 1) / SIDE_BY_SIDE;
    // Every seventh of a load comes off next, so that trucks are not loaded in the crew's order.
    int offOrder = number % inLoad * 7 % inLoad + 1;
    bundles.append(
        String.format(
            Locale.ROOT,
            "B%02d,L%d,%d,%.2f,%.2f,%.2f%n",
            number + 1,
            number / inLoad + 1,
            offOrder,
            part.get(0).lengthM() + 0.005,
            0.15 * SIDE_BY_SIDE,
            0.2 * layers));
    for (int i = 0; i < part.size(); i++) {
      Timber t = part.get(i);
      pieces.append(
          String.format(
              Locale.ROOT,
              "%s,W%d,%d,%d,%.3f,0.15,%s,eastern white pine,22,B%02d,%d%n",
              t.mark(),
              t.wall(),
              t.course(),
              t.position(),
              t.lengthM(),
              t.course() == 1 && t.wall() % 2 == 0 ? "0.1" : "0.2",
              number + 1,
              i / SIDE_BY_SIDE + 1));
    }
  }
}
