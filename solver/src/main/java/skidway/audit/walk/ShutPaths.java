package skidway.audit.walk;

import java.util.List;
import skidway.plan.Task;
import skidway.site.Spot;

/**
 * Finds, for every place that people no longer get to, a smallest set of used spots that together
 * shut it. Whoever asks more than once about one site keeps a {@link PathFlood} instead.
 */
public final class ShutPaths {
  private ShutPaths() {}

  /**
   * Asks about one set of stacks.
   *
   * @return ids of spots, in the order given, for each place that is shut; empty if none is
   */
  public static List<List<String>> find(Task task, List<Spot> usedSpots) {
    return new PathFlood(task).shutBy(usedSpots);
  }
}
