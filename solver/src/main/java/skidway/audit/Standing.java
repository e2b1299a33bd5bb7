package skidway.audit;

import java.util.List;
import java.util.Optional;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Zone;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/**
 * What a plan lets stand on a spot, as far as the job knows it: a stack, a rack's bundles, or the
 * one bundle that a step sets down to wait.
 *
 * @param name "Stack D3", "Rack R1" or "B2 at waiting place T1", to begin a sentence with
 * @param rack whether the pieces stand on end; a bundle that waits lies flat wherever it is
 * @param zone the deck or yard, when the site has it
 * @param bundles those of its bundles that are delivered, bottom to top
 * @param bearers what the step that puts the lowest one down tells of the bearers under it
 */
record Standing(
    String name,
    boolean rack,
    Spot spot,
    Optional<Zone> zone,
    List<Bundle> bundles,
    Optional<BearerRow> bearers) {
  Standing {
    bundles = List.copyOf(bundles);
  }

  static Standing stacked(
      Spot spot, Optional<Zone> zone, List<Bundle> bundles, Optional<BearerRow> bearers) {
    boolean rack = spot.kind() == SpotKind.RACK;
    return new Standing(
        (rack ? "Rack " : "Stack ") + spot.id(), rack, spot, zone, bundles, bearers);
  }

  static Standing waiting(Spot spot, Optional<Zone> zone, Bundle bundle, BearerRow bearers) {
    String name = bundle.id() + " at waiting place " + spot.id();
    return new Standing(name, false, spot, zone, List.of(bundle), Optional.of(bearers));
  }

  String id() {
    return spot.id();
  }

  /** Height of its top above the deck or ground; in a rack of its longest piece, on its rails. */
  double heightM(double bearerM) {
    return rack
        ? bearerM + bundles.stream().mapToDouble(Bundle::longestPieceM).max().orElse(0)
        : bundles.stream().mapToDouble(b -> b.heightM() + bearerM).sum();
  }

  double massKg() {
    return bundles.stream().mapToDouble(b -> b.mass().highKg()).sum();
  }
}
