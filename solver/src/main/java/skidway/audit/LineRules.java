package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import skidway.audit.plane.Rectangle;
import skidway.audit.plane.Segment;
import skidway.rules.Flag;
import skidway.rules.Rule;
import skidway.site.OverheadLine;
import skidway.site.TruckStand;
import skidway.units.Figures;
import skidway.units.Measure;

/** Checks that nothing is stored under or near an overhead line, seen from above. */
final class LineRules {
  /** 20 ft up to 350 kV, 50 ft above: nearer work needs measures before it begins. */
  private static final double WORK_TO_350_KV_M = 6.096;

  private static final double WORK_ABOVE_M = 15.24;

  private static final String WORK_SOURCE =
      "29 CFR 1926.1408 asks for measures before work begins there (the distance: 29 CFR"
          + " 1926.1409, "
          + Flag.SECONDARY.words()
          + ").";

  private final Scene scene;
  private final Ledger ledger;
  private final Figures figures;

  LineRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
    this.figures = scene.task().figures();
  }

  /** What is near enough to a line that work there needs measures first. */
  List<String> check() {
    List<String> remarks = new ArrayList<>();
    for (OverheadLine line : scene.task().site().overheadLines()) {
      new LineClearance(scene)
          .metres(line)
          .ifPresent(
              clearanceM -> scene.places().forEach(place -> overheadLine(place, line, clearanceM)));
      remarks.addAll(workNear(line));
    }
    return remarks;
  }

  private void overheadLine(Place place, OverheadLine line, double clearanceM) {
    ledger.least(
        Rule.OVERHEAD_LINE,
        place.id(),
        place.footprint().distanceTo(seenFromAbove(line)),
        clearanceM,
        d -> place.capitalName() + " stands " + d + " from " + name(line));
  }

  private List<String> workNear(OverheadLine line) {
    double nearM = line.volts() > 350_000 ? WORK_ABOVE_M : WORK_TO_350_KV_M;
    Stream<String> stacks =
        scene.places().stream()
            .filter(place -> place.footprint().distanceTo(seenFromAbove(line)) < nearM)
            .map(Place::name);
    Stream<String> trucks =
        scene.task().site().truckStands().stream()
            .filter(s -> Rectangle.of(s.area()).distanceTo(seenFromAbove(line)) < nearM)
            .map(TruckStand::id)
            .map("truck stand "::concat);
    List<String> near = Stream.concat(stacks, trucks).distinct().toList();
    return near.isEmpty()
        ? List.of()
        : List.of(
            "Within "
                + figures.length(nearM)
                + (" of " + name(line) + ": " + String.join(", ", near) + ". ")
                + WORK_SOURCE);
  }

  private String name(OverheadLine line) {
    return "overhead line " + line.id() + " (" + figures.of(Measure.VOLTAGE, line.volts()) + ")";
  }

  private static Segment seenFromAbove(OverheadLine line) {
    return new Segment(line.from(), line.to());
  }
}
