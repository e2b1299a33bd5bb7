package skidway.audit;

import java.util.Comparator;
import java.util.List;
import skidway.audit.plane.Rectangle;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Deck;

/**
 * Checks that nothing stands near a deck's edge over which it could fall: the edge is far, or a
 * wall there is already higher than the stack.
 */
final class DeckEdgeRules {
  /** A wall as high as the stack is not higher; twice the tolerance of lengths tells them apart. */
  private static final double HIGHER_M = 2 * Ledger.LENGTH_TOLERANCE_M;

  private final Scene scene;
  private final Ledger ledger;

  DeckEdgeRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  void check() {
    for (Deck deck : scene.task().site().decks()) {
      List<EdgeStretch> stretches = EdgeStretch.of(deck, scene.task().site().walls());
      scene.allStandings().stream()
          .filter(s -> s.spot().zoneId().equals(deck.id()) && Soundness.sound(s.spot()))
          .forEach(standing -> deckEdge(standing, deck, stretches));
    }
  }

  private void deckEdge(Standing standing, Deck deck, List<EdgeStretch> stretches) {
    Rectangle footprint = Rectangle.of(standing.spot().footprint());
    double setbackM = scene.setting(Setting.DECK_EDGE_SETBACK);
    stretches.stream()
        .filter(stretch -> !stretch.walled())
        .mapToDouble(stretch -> footprint.distanceTo(stretch.line()))
        .min()
        .ifPresent(apartM -> bareEdge(standing, deck, apartM, setbackM));
    stretches.stream()
        .filter(EdgeStretch::walled)
        .filter(s -> footprint.distanceTo(s.line()) < setbackM - Ledger.LENGTH_TOLERANCE_M)
        .min(Comparator.comparingDouble(EdgeStretch::builtM))
        .ifPresent(lowest -> walledEdge(standing, deck, lowest));
  }

  private void bareEdge(Standing standing, Deck deck, double apartM, double setbackM) {
    ledger.least(
        Rule.DECK_EDGE,
        standing.id(),
        apartM,
        setbackM,
        d -> standing.name() + " stands " + d + " from the edge of " + deck.id());
  }

  private void walledEdge(Standing standing, Deck deck, EdgeStretch stretch) {
    ledger.most(
        Rule.DECK_EDGE,
        standing.id(),
        standing.heightM(scene.setting(Setting.BEARER_HEIGHT)),
        stretch.builtM() - HIGHER_M,
        height ->
            standing.name()
                + (" is " + height + " high near the edge of " + deck.id() + ",")
                + (" where wall " + stretch.wallId() + " is no higher"));
  }
}
