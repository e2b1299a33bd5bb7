package skidway.sheet;

import java.util.List;
import java.util.function.Function;
import skidway.plan.Task;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Site;

/** Leaves out of a site what does not show in a window on one of its decks or yards. */
final class Crop {
  private Crop() {}

  /** The task with that site; of decks and yards it has the one alone. */
  static Task of(Task task, String zoneId, Extent window) {
    Site site = task.site();
    Site cropped =
        new Site(
            site.name(),
            site.boundary(),
            site.northDeg(),
            site.courseM(),
            shown(site.walls(), window, wall -> corners(wall.footprint().outline())),
            site.decks().stream().filter(d -> d.id().equals(zoneId)).toList(),
            site.yards().stream().filter(y -> y.id().equals(zoneId)).toList(),
            shown(site.lanes(), window, lane -> Band.of(lane).corners()),
            shown(site.keepClears(), window, area -> corners(area.outline())),
            shown(site.truckStands(), window, stand -> corners(stand.area().outline())),
            shown(site.overheadLines(), window, line -> Overhead.keptClear(line, task)),
            site.machine(),
            List.of());
    return new Task(task.jobName(), cropped, task.delivery(), task.settings(), task.figures());
  }

  private static List<Point> corners(Outline outline) {
    return outline.corners();
  }

  private static <T> List<T> shown(
      List<T> things, Extent window, Function<T, List<Point>> corners) {
    return things.stream().filter(thing -> window.touches(corners.apply(thing))).toList();
  }
}
