package skidway.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.erection.Placement;
import skidway.rules.Setting;
import skidway.timber.Piece;

/** Screens each piece by the lifting equation, where it is picked and where it is placed. */
final class HandLoads {
  private static final double CM_PER_M = 100;

  private final Scene scene;
  private final Team team;
  private final LiftLimit limit;
  private final Map<String, Placement> placements = new HashMap<>();

  HandLoads(Scene scene) {
    this.scene = scene;
    team = new Team(scene);
    limit = new LiftLimit(scene.setting(Setting.LIFT_FREQUENCY));
    scene
        .task()
        .pullOrder()
        .placements()
        .forEach(placement -> placements.put(placement.piece().mark(), placement));
  }

  /** Of every piece that lies somewhere and has a place on a wall. */
  List<HandLoad> all() {
    return new Picking(scene).picks().stream().map(this::load).flatMap(Optional::stream).toList();
  }

  private Optional<HandLoad> load(Pick pick) {
    return Optional.ofNullable(placements.get(pick.piece().mark()))
        .map(
            placement -> {
              double placeM = placement.bottomM() + pick.piece().section().heightM() / 2;
              return load(pick, placeM);
            });
  }

  private HandLoad load(Pick pick, double placeM) {
    Piece piece = pick.piece();
    double widthCm = CM_PER_M * piece.section().widthM();
    double pickCm = CM_PER_M * pick.heightM();
    double placeCm = CM_PER_M * placeM;
    double travelCm = Math.abs(placeCm - pickCm);
    double pickKg = limit.kg(widthCm, pickCm, pickCm, travelCm);
    double placeKg = limit.kg(widthCm, placeCm, pickCm, travelCm);
    double eachKg = piece.mass().highKg() / team.people(piece);
    String end =
        pickKg <= placeKg
            ? "when picked from " + pick.spotId() + " at " + length(pick.heightM())
            : "when placed at " + length(placeM);
    return new HandLoad(piece, eachKg / Math.min(pickKg, placeKg), end);
  }

  private String length(double metres) {
    return scene.task().figures().length(metres);
  }
}
