package skidway.staging;

import java.util.List;
import java.util.stream.IntStream;
import skidway.erection.PullOrder;
import skidway.geometry.Walker;
import skidway.geometry.WalkingDistances;
import skidway.layout.Exclusion;
import skidway.layout.LegalSpots;
import skidway.layout.SpotLayout;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.site.Spot;

/** Measures a site for a search: candidate spots, which exclude each other, how far people walk. */
final class Survey {
  /** A wall is higher than a stack when it is so by this much. */
  private static final double HIGHER_M = 0.005;

  private Survey() {}

  /** Given spots that break a placement rule are left out; the audit says which and why. */
  static Board of(Task task) {
    Site site = task.site();
    Settings settings = task.settings();
    LegalSpots legal = LegalSpots.of(site, settings);
    List<Spot> spots =
        SpotLayout.candidates(site, task.delivery(), settings).stream()
            .filter(legal::isLegal)
            .toList();
    Exclusion exclusion = Exclusion.of(spots, site, settings);
    int[][] excludes =
        IntStream.range(0, spots.size()).mapToObj(exclusion::of).toArray(int[][]::new);
    PullOrder order = PullOrder.of(site, task.delivery().pieces());
    Walker walker = new Walker(settings.get(Setting.STEP_OVER), settings.get(Setting.CLIMB_FACTOR));
    double[][] metres =
        WalkingDistances.between(site, walker, spots.stream().map(Spot::access).toList(), order);
    double[] heightCapM =
        spots.stream().mapToDouble(spot -> legal.heightCapM(spot) - HIGHER_M).toArray();
    return new Board(task, spots, heightCapM, excludes, metres, order);
  }
}
