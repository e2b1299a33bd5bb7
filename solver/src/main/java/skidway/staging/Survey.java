package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import skidway.erection.PullOrder;
import skidway.geometry.Walker;
import skidway.geometry.WalkingDistances;
import skidway.layout.Exclusion;
import skidway.layout.LegalSpots;
import skidway.layout.SpotLayout;
import skidway.plan.Presence;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.site.Spot;

/** Measures a site for a search: candidate spots, which exclude each other, how far people walk. */
final class Survey {
  /** A wall is higher than a stack when it is so by this much. */
  private static final double HIGHER_M = 0.005;

  /** Spots in a plan file are rounded to a tenth of a millimetre. */
  private static final double SAME_M = 0.001;

  private static final double SAME_DEG = 0.01;

  private Survey() {}

  /** Given spots that break a placement rule are left out; the audit says which and why. */
  static Board of(Task task) {
    return of(task, Presence.of(task));
  }

  static Board of(Task task, Presence presence) {
    Site site = task.site();
    Settings settings = task.settings();
    LegalSpots legal = LegalSpots.of(site, settings);
    List<Spot> spots = spots(task, legal);
    Exclusion exclusion = Exclusion.of(spots, site, settings);
    int[][] excludes =
        IntStream.range(0, spots.size()).mapToObj(exclusion::of).toArray(int[][]::new);
    PullOrder order = task.pullOrder();
    Walker walker = new Walker(settings.get(Setting.STEP_OVER), settings.get(Setting.CLIMB_FACTOR));
    double[][] metres =
        WalkingDistances.between(site, walker, spots.stream().map(Spot::access).toList(), order);
    double[] heightCapM =
        spots.stream().mapToDouble(spot -> legal.heightCapM(spot) - HIGHER_M).toArray();
    HandUnloading hands = HandUnloading.of(task, spots, walker, order, presence);
    return new Board(task, spots, heightCapM, excludes, metres, order, presence, hands);
  }

  /**
   * What lies somewhere lies there, legal or not. Then come the spots marked before, so that ground
   * which is used again keeps its code.
   */
  private static List<Spot> spots(Task task, LegalSpots legal) {
    List<Spot> known = new ArrayList<>();
    task.start().stacks().forEach(stack -> known.add(stack.spot()));
    for (Spot marked : task.start().marked()) {
      if (legal.isLegal(marked) && known.stream().noneMatch(spot -> isSame(spot, marked))) {
        known.add(marked);
      }
    }
    List<Spot> laidOut =
        SpotLayout.candidates(task.site(), task.delivery(), task.settings()).stream()
            .filter(legal::isLegal)
            .filter(candidate -> known.stream().noneMatch(spot -> isSame(spot, candidate)))
            .toList();
    return Stream.concat(known.stream(), laidOut.stream()).toList();
  }

  private static boolean isSame(Spot a, Spot b) {
    return a.id().equals(b.id())
        || (a.kind() == b.kind()
            && a.openSide() == b.openSide()
            && a.footprint().centre().distanceTo(b.footprint().centre()) < SAME_M
            && Math.abs(a.footprint().lengthM() - b.footprint().lengthM()) < SAME_M
            && Math.abs(a.footprint().widthM() - b.footprint().widthM()) < SAME_M
            && Math.abs(a.footprint().headingDeg() - b.footprint().headingDeg()) < SAME_DEG);
  }
}
