package skidway.audit;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import skidway.erection.PullOrder;
import skidway.rules.Setting;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;

/**
 * Counts the crew time of moving pieces aside, person-seconds: a piece is moved once if anything
 * beneath it, in its bundle or in a lower one, is laid on a lower level. In a rack pieces are stood
 * up once instead.
 */
final class MovedAside {
  private final Scene scene;
  private final Turns turns;
  private long inside;
  private long inStacks;
  private long racked;

  MovedAside(Scene scene, PullOrder order) {
    this.scene = scene;
    turns = new Turns(order.placements(), scene.task().start().held());
    for (Standing standing : scene.standings()) {
      if (standing.rack()) {
        standing.bundles().forEach(bundle -> rack(bundle, standing.id()));
      } else {
        stack(standing.bundles());
      }
    }
  }

  /** Inside bundles, for a piece in a lower layer. */
  double insideS() {
    return inside * scene.setting(Setting.REHANDLE_PIECE);
  }

  /** For a piece in a lower bundle alone, and standing pieces up in racks. */
  double rehandleS() {
    return inStacks * scene.setting(Setting.REHANDLE_PIECE) + rackedS();
  }

  /** Standing pieces up in racks. */
  double rackedS() {
    return racked * scene.setting(Setting.RACK_PIECE);
  }

  private void rack(Bundle bundle, String spotId) {
    racked += scene.layAt(bundle.id(), spotId) ? 0 : bundle.pieces().size();
  }

  private void stack(List<Bundle> bundles) {
    for (int tier = 0; tier < bundles.size(); tier++) {
      Bundle bundle = bundles.get(tier);
      int beneath =
          bundles.subList(0, tier).stream()
              .filter(lower -> scene.onSite().meet(lower, bundle))
              .flatMapToInt(lower -> lower.packed().stream().flatMapToInt(this::levels))
              .min()
              .orElse(Integer.MAX_VALUE);
      for (PackedPiece piece : bundle.packed()) {
        int own = level(piece).orElse(Integer.MIN_VALUE);
        if (own > lowestUnder(bundle, piece)) {
          inside++;
        } else if (own > beneath) {
          inStacks++;
        }
      }
    }
  }

  private int lowestUnder(Bundle bundle, PackedPiece upper) {
    int layer = scene.layer(bundle, upper);
    return bundle.packed().stream()
        .filter(lower -> scene.layer(bundle, lower) < layer)
        .flatMapToInt(this::levels)
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  private IntStream levels(PackedPiece piece) {
    return level(piece).stream();
  }

  private OptionalInt level(PackedPiece piece) {
    return turns.of(piece.piece().mark());
  }
}
