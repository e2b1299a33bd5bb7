package skidway.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.timber.Bundle;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;

/**
 * Knows what lies beneath each piece in its stack: what is of lower layers of its bundle, and of
 * lower bundles that are there together with it. Beneath what stands on end nothing lies.
 */
final class Beneath {
  private final Scene scene;
  private final Turns turns;
  private final Map<String, Integer> pull = new HashMap<>();
  private final Map<String, List<String>> beneath = new HashMap<>();

  Beneath(Scene scene, PullOrder order) {
    this.scene = scene;
    turns = new Turns(order.placements(), scene.task().start().held());
    for (Placement placement : order.placements()) {
      pull.put(placement.piece().mark(), pull.size());
    }
    scene.standings().stream()
        .filter(standing -> !standing.rack())
        .forEach(standing -> stack(standing.bundles()));
  }

  private void stack(List<Bundle> bundles) {
    for (int tier = 0; tier < bundles.size(); tier++) {
      Bundle bundle = bundles.get(tier);
      List<String> lower =
          bundles.subList(0, tier).stream()
              .filter(other -> scene.onSite().meet(other, bundle))
              .flatMap(other -> other.pieces().stream())
              .map(Piece::mark)
              .toList();
      bundle
          .packed()
          .forEach(packed -> beneath.put(packed.piece().mark(), all(bundle, packed, lower)));
    }
  }

  private List<String> all(Bundle bundle, PackedPiece upper, List<String> lower) {
    List<String> all = new ArrayList<>(lower);
    int layer = scene.layer(bundle, upper);
    bundle.packed().stream()
        .filter(packed -> scene.layer(bundle, packed) < layer)
        .forEach(packed -> all.add(packed.piece().mark()));
    return all;
  }

  /**
   * Whether a piece is moved aside because something beneath it is taken out earlier: when its turn
   * on the wall comes, or when a wave brings it to a pile. What is brought at once is taken from
   * the top down.
   *
   * @param laid how many pieces are laid when the wave is brought in
   * @param brought marks of what it brings
   */
  boolean isUncovered(String mark, int laid, Set<String> brought) {
    return beneath.getOrDefault(mark, List.of()).stream()
        .anyMatch(
            lower ->
                brought.contains(mark)
                    ? pull.getOrDefault(lower, Integer.MAX_VALUE) < laid
                    : brought.contains(lower) || isLaidBefore(lower, mark));
  }

  private boolean isLaidBefore(String lower, String upper) {
    OptionalInt first = turns.of(lower);
    OptionalInt then = turns.of(upper);
    return first.isPresent() && then.isPresent() && first.getAsInt() < then.getAsInt();
  }
}
