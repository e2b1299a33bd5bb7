package skidway.cli;

import java.util.List;
import java.util.Locale;
import skidway.layout.Breach;
import skidway.layout.LegalSpots;
import skidway.plan.Task;

/** Says which of the spots given with a site a plan cannot use, and why. */
final class GivenSpotRemarks {
  private GivenSpotRemarks() {}

  static List<String> lines(Task task) {
    LegalSpots legal = LegalSpots.of(task.site(), task.settings());
    return task.site().spots().stream()
        .flatMap(spot -> legal.breaches(spot).stream())
        .map(breach -> line(breach, task))
        .toList();
  }

  private static String line(Breach breach, Task task) {
    return String.format(
        Locale.ROOT,
        "Spot %s is left out, %s: %s (%s, at least %s needed).",
        breach.spotId(),
        breach.rule().id(),
        breach.against(),
        task.figures().length(breach.valueM()),
        task.figures().length(breach.limitM()));
  }
}
