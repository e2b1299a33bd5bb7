package skidway.audit;

import java.util.List;
import skidway.rules.Rule;
import skidway.rules.Setting;

/** Checks each pair of used spots: the gap between them, and that neither stands on a strip. */
final class SpacingRules {
  private final Scene scene;
  private final Ledger ledger;

  SpacingRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  void check() {
    List<Place> places = scene.places();
    for (int i = 0; i < places.size(); i++) {
      for (int j = i + 1; j < places.size(); j++) {
        spotsApart(places.get(i), places.get(j));
      }
    }
  }

  /** Two spots that are used at once. */
  void spotsApart(Place a, Place b) {
    if (a.spot().equals(b.spot())) {
      String sentence = a.capitalName() + " is planned twice at the same time.";
      ledger.broken(Rule.SPOTS_APART, a.id(), 2, 1, sentence);
      return;
    }
    double apartM = a.footprint().separation(b.footprint());
    if (apartM >= -Ledger.LENGTH_TOLERANCE_M) {
      ledger.least(
          Rule.SPOTS_APART,
          a.id() + ", " + b.id(),
          apartM,
          scene.setting(Setting.STACK_GAP),
          d -> a.capitalName() + " stands " + d + " from " + b.name());
    } else {
      ledger.apart(
          Rule.SPOTS_APART,
          a.id() + ", " + b.id(),
          apartM,
          d -> a.capitalName() + " and " + b.name() + " overlap by " + d + ".");
    }
    offStrip(a, b);
    offStrip(b, a);
  }

  private void offStrip(Place standing, Place open) {
    ledger.apart(
        Rule.SPOTS_APART,
        standing.id() + ", " + open.id(),
        standing.footprint().separation(open.strip()),
        d ->
            standing.capitalName()
                + " stands "
                + d
                + " within the open side of "
                + open.name()
                + ".");
  }
}
