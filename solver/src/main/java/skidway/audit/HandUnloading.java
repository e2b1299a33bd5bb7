package skidway.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.audit.walk.CarryWalks;
import skidway.plan.Step;
import skidway.rules.Setting;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.TruckStand;
import skidway.timber.Bundle;
import skidway.timber.Load;
import skidway.timber.Piece;

/**
 * Estimates the crew time of unloading by hand: people carry every timber of a bundle from a long
 * side of its truck to the open side of its spot, lay it there and walk back. Each bundle takes the
 * side of the truck from which the walk is shorter, past the walls that stand when its load comes.
 */
final class HandUnloading {
  private final Scene scene;
  private final Team team;
  private final CarryWalks walks;
  private final Map<Way, Double> known = new HashMap<>();
  private double walkS;
  private double layS;
  private final List<String> unreached = new ArrayList<>();

  private record Way(TruckStand truck, int pulled, Point to) {}

  HandUnloading(Scene scene, CarryWalks walks) {
    this.scene = scene;
    this.walks = walks;
    team = new Team(scene);
    if (scene.task().site().byHand()) {
      scene.steps().stream().filter(step -> step.kind().offTruck()).forEach(this::add);
    }
  }

  double personS() {
    return walkS + layS;
  }

  /** The part of it that people walk. */
  double walkS() {
    return walkS;
  }

  /** The bundles of which nobody can carry the timbers to their spots. */
  List<String> unreached() {
    return List.copyOf(unreached);
  }

  private void add(Step step) {
    Optional<Bundle> bundle = scene.task().delivery().bundle(step.bundleId());
    Optional<Spot> spot = scene.spot(step.toId());
    Optional<TruckStand> truck = bundle.flatMap(this::truck);
    if (bundle.isPresent() && spot.isPresent() && truck.isPresent()) {
      add(bundle.get(), truck.get(), spot.get());
    }
  }

  private Optional<TruckStand> truck(Bundle bundle) {
    return scene
        .task()
        .delivery()
        .load(bundle.loadId())
        .map(Load::truckStandId)
        .flatMap(scene.task().site()::truckStand);
  }

  private void add(Bundle bundle, TruckStand truck, Spot spot) {
    int pulled = scene.onSite().comesAfter(bundle);
    double metres = known.computeIfAbsent(new Way(truck, pulled, spot.access()), this::metres);
    if (!Double.isFinite(metres)) {
      unreached.add(bundle.id());
      return;
    }
    double sPerM = 1 / scene.setting(Setting.LOADED_SPEED) + 1 / scene.setting(Setting.EMPTY_SPEED);
    for (Piece piece : bundle.pieces()) {
      walkS += team.people(piece) * metres * sPerM;
    }
    if (spot.kind() != SpotKind.RACK) {
      layS +=
          scene.setting(Setting.PILE_SET_UP)
              + bundle.pieces().size() * scene.setting(Setting.LAY_PIECE);
    }
  }

  private double metres(Way way) {
    return sides(way.truck()).stream()
        .mapToDouble(side -> walks.metres(side, way.to(), way.pulled()))
        .min()
        .orElseThrow();
  }

  /** The middles of the truck's long sides. */
  private static List<Point> sides(TruckStand truck) {
    Point along = truck.area().along();
    double lengthM = truck.area().lengthM();
    double widthM = truck.area().widthM();
    Point off = lengthM < widthM ? along.times(lengthM / 2) : along.turnedLeft().times(widthM / 2);
    return List.of(truck.area().centre().minus(off), truck.area().centre().plus(off));
  }
}
