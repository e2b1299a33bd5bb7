package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import skidway.layout.Breach;
import skidway.layout.Exclusion;
import skidway.layout.LegalSpots;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Spot;

/** Says which of the spots given with a site a plan cannot use, and why. */
final class GivenSpotRemarks {
  private GivenSpotRemarks() {}

  static List<String> lines(Task task) {
    LegalSpots legal = LegalSpots.of(task.site(), task.settings());
    List<Spot> spots = task.site().spots();
    List<String> lines = new ArrayList<>();
    spots.forEach(spot -> legal.breaches(spot).forEach(b -> lines.add(line(b, task))));
    Exclusion exclusion = Exclusion.of(spots, task.settings());
    for (int a = 0; a < spots.size(); a++) {
      for (int b : exclusion.of(a)) {
        if (a < b) {
          lines.add(
              String.format(
                  Locale.ROOT,
                  "Spots %s and %s are too near each other to be used together, %s.",
                  spots.get(a).id(),
                  spots.get(b).id(),
                  Rule.SPOTS_APART.id()));
        }
      }
    }
    return lines;
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
