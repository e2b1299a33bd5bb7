package skidway.sheet;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Deals the cards of all stacks out over the map: one after the other, again in later rounds when
 * others have moved, and at last in pairs, so that a card that came late can push an earlier one
 * on.
 */
final class CardTable {
  private static final int ROUNDS = 2;

  /** A place that costs less needs no pushing. */
  private static final double GOOD = 12;

  private static final int MOST_PUSHERS = 10;
  private static final int MOST_PUSHED = 8;

  private final CardPlaces places;
  private final Map<StackView, PlacedCard> placed = new LinkedHashMap<>();

  private CardTable(CardPlaces places) {
    this.places = places;
  }

  /** The cards that found room. */
  static List<PlacedCard> deal(List<StackView> stacks, CardPlaces places) {
    CardTable table = new CardTable(places);
    for (int round = 0; round < ROUNDS; round++) {
      stacks.forEach(table::placeAnew);
    }
    stacks.stream()
        .sorted(Comparator.comparingDouble((StackView s) -> -table.cost(s)))
        .filter(s -> table.cost(s) > GOOD)
        .limit(MOST_PUSHERS)
        .toList()
        .forEach(table::push);
    return List.copyOf(table.placed.values());
  }

  private double cost(StackView stack) {
    PlacedCard card = placed.get(stack);
    return card == null ? Double.POSITIVE_INFINITY : card.cost();
  }

  private void placeAnew(StackView stack) {
    take(stack);
    places.find(stack).ifPresent(card -> put(stack, card));
  }

  /** Lets a card take its best place although others lie there, if that is better for both. */
  private void push(StackView pusher) {
    List<StackView> nearest =
        placed.keySet().stream()
            .filter(s -> !s.equals(pusher))
            .sorted(Comparator.comparingDouble(s -> distanceM(s, pusher)))
            .limit(MOST_PUSHED)
            .toList();
    for (StackView other : nearest) {
      pushOne(pusher, other);
    }
  }

  private void pushOne(StackView pusher, StackView other) {
    double before = cost(pusher) + cost(other);
    Optional<PlacedCard> was = take(pusher);
    Optional<PlacedCard> otherWas = take(other);
    placeAnew(pusher);
    placeAnew(other);
    if (!(cost(pusher) + cost(other) < before)) {
      take(pusher);
      take(other);
      was.ifPresent(card -> put(pusher, card));
      otherWas.ifPresent(card -> put(other, card));
    }
  }

  private Optional<PlacedCard> take(StackView stack) {
    Optional<PlacedCard> card = Optional.ofNullable(placed.remove(stack));
    card.ifPresent(places::release);
    return card;
  }

  private void put(StackView stack, PlacedCard card) {
    placed.put(stack, card);
    places.block(card);
  }

  private static double distanceM(StackView a, StackView b) {
    return a.spot().footprint().centre().distanceTo(b.spot().footprint().centre());
  }
}
