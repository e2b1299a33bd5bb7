package skidway.sheet;

import java.util.List;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Point;
import skidway.site.Wall;

/**
 * Where tapes can be pulled: through no wall that stands higher than people step over, not even
 * through its doors, which a level tape seldom meets.
 */
record TapeSight(List<Wall> standing) {
  TapeSight {
    standing = List.copyOf(standing);
  }

  static TapeSight of(Task task) {
    double stepOverM = task.settings().get(Setting.STEP_OVER);
    return new TapeSight(
        task.site().walls().stream().filter(wall -> wall.builtM() > stepOverM).toList());
  }

  boolean isClear(Point from, Point to) {
    return standing.stream().noneMatch(wall -> crosses(wall.start(), wall.end(), from, to));
  }

  /** Whether the tape passes over the wall's middle, its ends counted with it. */
  private static boolean crosses(Point start, Point end, Point from, Point to) {
    return side(start, end, from) * side(start, end, to) < 0
        && side(from, to, start) * side(from, to, end) <= 0;
  }

  /** Positive on the left of the way, negative on its right. */
  private static double side(Point from, Point to, Point p) {
    return Math.signum(to.minus(from).cross(p.minus(from)));
  }
}
