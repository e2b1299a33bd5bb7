package skidway.sheet;

import java.util.List;
import java.util.Optional;
import skidway.erection.Placement;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/**
 * One piece of the pull list: where it lies, who takes it and what lies over it.
 *
 * @param turn 1 is pulled first
 * @param bundle it comes in
 * @param layer of the bundle it lies in, 1 is the lowest
 * @param spot where its bundle stands, unless the plan has no spot for it
 * @param tier of its bundle, 1 is the lowest; 0 in a rack and without a spot
 * @param people who carry it together
 * @param device whether it may be too heavy for the largest team
 * @param piled where it lies instead of in its bundle, if a wave brought it to a pile before
 * @param over what is moved aside when its turn comes: of higher tiers, the highest first, then of
 *     higher layers of its own bundle
 */
public record PullLine(
    int turn,
    Placement placement,
    Bundle bundle,
    int layer,
    Optional<Spot> spot,
    int tier,
    int people,
    boolean device,
    Optional<Piled> piled,
    List<Over> over) {

  /** A piece that is in the way, and the bundle it lies in. */
  public record Over(String mark, String bundleId) {}

  public PullLine {
    over = List.copyOf(over);
  }

  public Piece piece() {
    return placement.piece();
  }

  /** The code to go to: of its pile, or else of its bundle's spot; or that there is none. */
  public String place() {
    return piled.map(Piled::pileId).orElse(spotCode());
  }

  /** The code of its bundle's spot, or that there is none. */
  String spotCode() {
    return spot.map(Spot::id).orElse("no spot");
  }

  /** The tier to look in, as far as there are tiers. */
  public String level() {
    if (piled.isPresent()) {
      return "pile";
    }
    return rack() ? "on end" : tier == 0 ? "" : Integer.toString(tier);
  }

  /** The layer it lies in, of its pile or of its bundle. */
  public int layerThere() {
    return piled.map(Piled::layer).orElse(layer);
  }

  /** Whether it stands on end. */
  public boolean rack() {
    return spot.filter(s -> s.kind() == SpotKind.RACK).isPresent();
  }
}
