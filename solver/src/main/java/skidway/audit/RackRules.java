package skidway.audit;

import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/** Checks what stands on end in a rack: short enough, and not too many. */
final class RackRules {
  private final Scene scene;
  private final Ledger ledger;

  RackRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  void check() {
    for (Standing standing : scene.standings()) {
      if (standing.rack()) {
        rackLength(standing);
        rackRoom(standing);
      }
    }
  }

  private void rackLength(Standing rack) {
    for (Bundle bundle : rack.bundles()) {
      for (Piece piece : bundle.pieces()) {
        ledger.most(
            Rule.RACK_LENGTH,
            rack.id(),
            piece.lengthM(),
            scene.setting(Setting.RACK_PIECE_LENGTH),
            length ->
                piece.mark() + " of " + bundle.id() + " in rack " + rack.id() + " is " + length);
      }
    }
  }

  private void rackRoom(Standing rack) {
    double coveredM2 =
        rack.bundles().stream()
            .flatMap(b -> b.pieces().stream())
            .mapToDouble(p -> p.section().widthM() * p.section().heightM())
            .sum();
    ledger.most(
        Rule.RACK_ROOM,
        rack.id(),
        coveredM2 / rack.spot().footprint().areaM2(),
        scene.setting(Setting.RACK_PACKING),
        share -> "The pieces on end in rack " + rack.id() + " cover " + share + " of its floor");
  }
}
