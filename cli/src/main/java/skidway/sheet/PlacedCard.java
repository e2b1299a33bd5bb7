package skidway.sheet;

/**
 * A card with the place that was found for it.
 *
 * @param cost how bad the place is
 */
record PlacedCard(TierCard card, Box box, Leader leader, double cost) {
  void draw(Drawing drawing) {
    leader.draw(drawing);
    card.draw(drawing, box);
  }
}
