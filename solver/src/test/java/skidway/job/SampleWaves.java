package skidway.job;

import java.util.List;
import java.util.OptionalDouble;
import skidway.plan.Brought;
import skidway.plan.PieceHours;
import skidway.plan.PileTrip;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.plan.Way;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.BearerRow;

/** Waves to write and read back; they need not make sense on any site. */
final class SampleWaves {
  private static final PieceHours HOURS = new PieceHours(1200.5, 300, 0, 12.1, 0, 90);

  private SampleWaves() {}

  /** Waves whose figures have no more digits than the file keeps. */
  static WavePlan exact(PlanMark plan) {
    Wave first =
        new Wave(
            1,
            0,
            24,
            1,
            2,
            List.of(
                pile(
                    "P1.1",
                    OptionalDouble.empty(),
                    List.of(List.of("W1-2", "W2-2"), List.of("W1-1"))),
                pile("P1.2", OptionalDouble.of(4000), List.of(List.of("W3-1")))),
            List.of(
                new Brought("W1-2", "B01", "N-01", "P1.1", Way.BY_HAND, 2),
                new Brought("W3-1", "B02", "N-01", "P1.2", Way.BY_MACHINE, 1)),
            List.of(
                new PileTrip(
                    "B02", "N-01", "P1.2", List.of("W3-1"), "M", "N", 12.5, 850.25, 1999.99)),
            HOURS);
    Wave second =
        new Wave(
            2,
            24,
            30,
            3,
            3,
            List.of(pile("P2.1", OptionalDouble.empty(), List.of(List.of("W1-3")))),
            List.of(new Brought("W1-3", "B01", "N-01", "P2.1", Way.BY_HAND, 2)),
            List.of(),
            PieceHours.NONE);
    return new WavePlan(
        "sample", plan.revision(), plan.fingerprint(), List.of(first, second), HOURS, HOURS);
  }

  private static TimberPile pile(String id, OptionalDouble massLimitKg, List<List<String>> layers) {
    Footprint footprint = new Footprint(new Point(12.25, -3), 90, 5, 0.9);
    Spot spot = new Spot(id, "yard", SpotKind.STACK, footprint, OpenSide.RIGHT, 0.91, massLimitKg);
    return new TimberPile(spot, layers, 0.425, 310.75, new BearerRow(3, 1.2, 0.3, 0.75));
  }
}
