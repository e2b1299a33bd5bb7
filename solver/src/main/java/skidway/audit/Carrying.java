package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import skidway.audit.walk.CarryWalks;
import skidway.erection.PullOrder;
import skidway.rules.Setting;
import skidway.timber.Piece;

/** Estimates the crew time of carrying every piece from its spot to its place and walking back. */
final class Carrying {
  private final Scene scene;
  private final Handling handling;
  private final Team team;
  private final CarryWalks walks;
  private double personS;
  private int unreached;

  Carrying(Scene scene, PullOrder order, Handling handling) {
    this.scene = scene;
    this.handling = handling;
    team = new Team(scene);
    walks = new CarryWalks(scene.task(), order);
    scene.standings().stream().filter(s -> Soundness.sound(s.spot())).forEach(this::add);
  }

  /** Person-seconds, of the pieces that somebody can get to. */
  double personS() {
    return personS;
  }

  /** How many pieces nobody can carry to their places. */
  int unreached() {
    return unreached;
  }

  private void add(Standing standing) {
    List<Piece> pieces = new ArrayList<>();
    List<Integer> pulls = new ArrayList<>();
    standing.bundles().stream()
        .flatMap(bundle -> bundle.pieces().stream())
        .forEach(
            piece ->
                handling
                    .pullIndex(piece)
                    .ifPresent(
                        pull -> {
                          pieces.add(piece);
                          pulls.add(pull);
                        }));
    double[] metres = walks.metres(standing.spot().access(), pulls);
    for (int i = 0; i < metres.length; i++) {
      if (Double.isFinite(metres[i])) {
        personS += team.people(pieces.get(i)) * metres[i] * secondsPerMetre();
      } else {
        unreached++;
      }
    }
  }

  /** There with the piece and back without. */
  private double secondsPerMetre() {
    return 1 / scene.setting(Setting.LOADED_SPEED) + 1 / scene.setting(Setting.EMPTY_SPEED);
  }
}
