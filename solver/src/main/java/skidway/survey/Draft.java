package skidway.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.job.Quote;
import skidway.site.Point;
import skidway.units.Nearest;

/** The site while it is put together: its lists of things, and what ground they cover. */
final class Draft {
  private final Map<String, List<Thing>> lists = new LinkedHashMap<>();
  private final Map<String, Deck> decks = new LinkedHashMap<>();
  private final List<Point> covered = new ArrayList<>();

  /**
   * A deck that more is said of in later lines.
   *
   * @param overhangM how far it reaches beyond the outside faces, when it lies under the house
   */
  record Deck(Thing thing, double overhangM) {}

  void add(String list, Thing thing) {
    lists.computeIfAbsent(list, l -> new ArrayList<>()).add(thing);
  }

  void deck(String id, Deck deck) {
    decks.put(id, deck);
    add("decks", deck.thing());
  }

  /** A deck said before; the problem tells which there are. */
  Deck deck(LocatedNode.Text id, LineScanner line) {
    Deck deck = decks.get(id.value());
    if (deck == null) {
      throw line.refuse(
          id.place(),
          "unknown deck " + Quote.found(id.value()) + Nearest.hint(id.value(), decks.keySet()),
          decks.isEmpty()
              ? "no line before says a deck that could be read"
              : "a deck is one of " + String.join(", ", decks.keySet()),
          "name one of them, or say the deck first");
    }
    return deck;
  }

  void covers(List<Point> points) {
    covered.addAll(points);
  }

  List<Point> covered() {
    return covered;
  }

  /** A list as a node; empty when nothing is in it. */
  Optional<LocatedNode> list(String name, Place place) {
    List<Thing> things = lists.getOrDefault(name, List.of());
    return things.isEmpty() ? Optional.empty() : Optional.of(items(place, things));
  }

  static LocatedNode items(Place place, List<Thing> things) {
    List<LocatedNode> nodes = new ArrayList<>();
    things.forEach(t -> nodes.add(t.done()));
    return new LocatedNode.Items(place, nodes);
  }
}
