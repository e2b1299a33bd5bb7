package skidway.site;

/**
 * A way up and down between the ground and a deck.
 *
 * @param foot where people step off onto the ground
 * @param top where people step onto the deck
 */
public record Steps(String id, Point foot, Point top, double widthM) {}
