package skidway.audit;

import java.util.List;
import skidway.audit.walk.PathFlood;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Spot;

/**
 * Estimates how much wider than they must be the ways are that the stacks leave open, by trying
 * wider ones. Where the site itself is narrower than a width, that width asks nothing of the
 * stacks.
 *
 * @param place where a wider way would be shut first, or an empty text if none is
 * @param widthM the widest way tried that is open everywhere
 */
record WidestWay(String place, double widthM) {
  private static final double MOST_TIMES = 3;
  private static final int HALVINGS = 4;

  /** For stacks that leave ways of the walking width open. */
  static WidestWay of(Task task, List<Spot> used) {
    double open = task.settings().get(Setting.WALK_WIDTH);
    double shut = MOST_TIMES * open;
    String place = firstShut(task, shut, used);
    if (place.isEmpty()) {
      return new WidestWay("", shut);
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (open + shut) / 2;
      String shutThere = firstShut(task, middle, used);
      if (shutThere.isEmpty()) {
        open = middle;
      } else {
        shut = middle;
        place = shutThere;
      }
    }
    return new WidestWay(place, open);
  }

  private static String firstShut(Task task, double widthM, List<Spot> used) {
    return new PathFlood(task, widthM).firstShut(used).orElse("");
  }
}
