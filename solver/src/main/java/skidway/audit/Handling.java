package skidway.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.plan.StepKind;
import skidway.rules.Setting;
import skidway.site.Point;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/** Counts the crew time of moving pieces aside and of the machine's lifts, person-seconds. */
final class Handling {
  private final Scene scene;
  private final StepPlaces places;
  private final Map<String, Integer> pullIndex = new HashMap<>();

  Handling(Scene scene, PullOrder order) {
    this.scene = scene;
    this.places = new StepPlaces(scene);
    for (Placement placement : order.placements()) {
      pullIndex.put(placement.piece().mark(), pullIndex.size());
    }
  }

  /** When a piece is pulled, if it has a place on a wall. */
  OptionalInt pullIndex(Piece piece) {
    Integer index = pullIndex.get(piece.mark());
    return index == null ? OptionalInt.empty() : OptionalInt.of(index);
  }

  double rehandleS() {
    return scene.standings().stream().mapToDouble(this::rehandleS).sum();
  }

  private double rehandleS(Standing standing) {
    if (standing.rack()) {
      long pieces = standing.bundles().stream().mapToLong(b -> b.pieces().size()).sum();
      return pieces * scene.setting(Setting.RACK_PIECE);
    }
    int firstBeneath = Integer.MAX_VALUE;
    long aside = 0;
    for (Bundle bundle : standing.bundles()) {
      List<Integer> pulls =
          bundle.pieces().stream().flatMapToInt(p -> pullIndex(p).stream()).boxed().toList();
      for (int pull : pulls) {
        aside += pull > firstBeneath ? 1 : 0;
      }
      firstBeneath =
          Math.min(firstBeneath, pulls.stream().min(Integer::compare).orElse(firstBeneath));
    }
    return aside * scene.setting(Setting.REHANDLE_PIECE);
  }

  /** Off the truck, onto a stack or down to wait. */
  double machineS() {
    return scene.steps().stream()
        .filter(step -> step.kind() != StepKind.LIFT_ON)
        .mapToDouble(step -> liftS(places.truck(step), places.stand(step)))
        .sum();
  }

  /** From a waiting place onto a stack. */
  double setDownS() {
    return scene.steps().stream()
        .filter(step -> step.kind() == StepKind.LIFT_ON)
        .mapToDouble(step -> liftS(places.waitingStand(step), places.stand(step)))
        .sum();
  }

  private double liftS(Optional<Point> from, Optional<Point> to) {
    double travelM = from.flatMap(a -> to.map(a::distanceTo)).orElse(0.0);
    return (scene.setting(Setting.MACHINE_LIFT)
            + 2 * travelM / scene.setting(Setting.MACHINE_SPEED))
        * scene.setting(Setting.MACHINE_CREW);
  }
}
