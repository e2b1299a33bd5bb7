package skidway.layout;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import skidway.geometry.Area;
import skidway.geometry.CentreLine;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.Site;
import skidway.site.Spot;

/**
 * Checks deckEdge: a stack keeps back from the edge of its deck, except from stretches where a wall
 * stands already. There the wall caps the stack's height instead.
 */
final class DeckEdge implements PlacementCheck {
  private record Stretch(CentreLine line, double wallM) {}

  private record Edge(Area deck, List<Stretch> stretches) {}

  private final double setbackM;
  private final Map<String, Edge> edges = new TreeMap<>();

  DeckEdge(Site site, Settings settings) {
    setbackM = settings.get(Setting.DECK_EDGE_SETBACK);
    for (Deck deck : site.decks()) {
      List<Stretch> stretches =
          EdgeStretch.of(deck.outline(), site.walls()).stream()
              .map(s -> new Stretch(CentreLine.of(List.of(s.from(), s.to())), s.wallM()))
              .toList();
      edges.put(deck.id(), new Edge(Area.of(deck.outline()), stretches));
    }
  }

  /** What reaches beyond the deck is left to insideZone. */
  @Override
  public List<Finding> findings(Spot spot) {
    Edge edge = edges.get(spot.zoneId());
    if (edge == null || capM(spot) > 0 || !edge.deck.contains(spot.footprint())) {
      return List.of();
    }
    return List.of(
        new Finding(
            Rule.DECK_EDGE, "edge of " + spot.zoneId(), () -> bareGapM(edge, spot), setbackM));
  }

  /** What a stack's top must stay below, metres above the deck; infinite away from the edge. */
  double capM(Spot spot) {
    Edge edge = edges.get(spot.zoneId());
    double capM = Double.POSITIVE_INFINITY;
    if (edge != null) {
      for (Stretch stretch : edge.stretches) {
        if (stretch.wallM < capM && stretch.line.isNearer(spot.footprint(), setbackM)) {
          capM = stretch.wallM;
        }
      }
    }
    return capM;
  }

  /** Distance to the nearest stretch without a wall. */
  private static double bareGapM(Edge edge, Spot spot) {
    return edge.stretches.stream()
        .filter(stretch -> stretch.wallM == 0)
        .mapToDouble(stretch -> stretch.line.gapM(spot.footprint()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
