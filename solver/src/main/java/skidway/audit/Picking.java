package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import skidway.rules.Setting;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;

/** Finds how high up each piece lies, and the crew time lost where that is too low or too high. */
final class Picking {
  /** Of a piece on end in a rack: as good as it gets (NIOSH 94-110, rev. 9/2021, p. 9). */
  private static final double KNUCKLE_CM = 75;

  private static final double HIGHEST_CM = 175;
  private static final double PER_CM = 0.003;

  private final Scene scene;
  private final Team team;
  private final List<Pick> picks = new ArrayList<>();

  Picking(Scene scene) {
    this.scene = scene;
    this.team = new Team(scene);
    scene.standings().forEach(this::add);
  }

  List<Pick> picks() {
    return List.copyOf(picks);
  }

  double personS() {
    return picks.stream().mapToDouble(this::personS).sum();
  }

  /** A bundle stays as high up as it came to lie on what was there then. */
  private void add(Standing standing) {
    double bearerM = scene.setting(Setting.BEARER_HEIGHT);
    for (int tier = 0; tier < standing.bundles().size(); tier++) {
      Bundle bundle = standing.bundles().get(tier);
      int came = scene.onSite().comes(bundle);
      double beneathM = 0;
      for (Bundle lower : standing.bundles().subList(0, tier)) {
        beneathM += scene.onSite().isThere(lower, came) ? bearerM + lower.heightM() : 0;
      }
      add(standing, bundle, beneathM + bearerM);
    }
  }

  private void add(Standing standing, Bundle bundle, double undersideM) {
    for (PackedPiece packed : bundle.packed()) {
      double belowM = (scene.layer(bundle, packed) - 0.5) * bundle.heightM() / bundle.layers();
      double layM = undersideM + belowM;
      double heightM = standing.rack() ? KNUCKLE_CM / 100 : layM;
      picks.add(new Pick(packed.piece(), standing.id(), heightM, standing.rack()));
    }
  }

  /** What one pick loses; nothing where the piece stands on end. */
  double personS(Pick pick) {
    return pick.upright()
        ? 0
        : team.people(pick.piece()) * scene.setting(Setting.PICK_TIME) * lost(pick.heightM());
  }

  /** The share of a person's strength that is lost at a height, to the micrometre. */
  private static double lost(double heightM) {
    double heightCm = Math.round(heightM * 1e6) / 1e4;
    boolean outOfReach = heightCm < 0 || heightCm > HIGHEST_CM;
    return outOfReach ? 1 : PER_CM * Math.abs(heightCm - KNUCKLE_CM);
  }
}
