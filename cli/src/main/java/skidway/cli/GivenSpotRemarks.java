package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import skidway.layout.Breach;
import skidway.layout.Exclusion;
import skidway.layout.LegalSpots;
import skidway.plan.Task;
import skidway.site.Spot;
import skidway.units.Measure;

/** Says which of the spots given with a site a plan cannot use, and why. */
final class GivenSpotRemarks {
  private GivenSpotRemarks() {}

  static List<String> lines(Task task) {
    LegalSpots legal = LegalSpots.of(task.site(), task.settings());
    List<Spot> spots = task.site().spots();
    List<String> lines = new ArrayList<>();
    spots.forEach(spot -> legal.breaches(spot).forEach(b -> lines.add(line(b, task))));
    Exclusion exclusion = Exclusion.of(spots, task.site(), task.settings());
    for (int a = 0; a < spots.size(); a++) {
      for (int b : exclusion.of(a)) {
        if (a < b) {
          lines.add(
              String.format(
                  Locale.ROOT,
                  "Spots %s and %s are too near each other to be used together, %s.",
                  spots.get(a).id(),
                  spots.get(b).id(),
                  exclusion.rule(a, b).id()));
        }
      }
    }
    return lines;
  }

  private static String line(Breach breach, Task task) {
    Measure measure = breach.rule().measure();
    String limit = task.figures().of(measure, breach.limit());
    return String.format(
        Locale.ROOT,
        "Spot %s is left out, %s: %s (%s, %s).",
        breach.spotId(),
        breach.rule().id(),
        breach.against(),
        task.figures().of(measure, breach.value()),
        breach.value() > breach.limit()
            ? "at most " + limit + " allowed"
            : "at least " + limit + " needed");
  }
}
