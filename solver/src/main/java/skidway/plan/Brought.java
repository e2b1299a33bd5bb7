package skidway.plan;

/**
 * A piece that a wave brings from its bundle to a pile.
 *
 * @param mark of the piece
 * @param fromSpotId where its bundle lies
 * @param people who carry it, to the pile if by hand and from the pile to its wall
 */
public record Brought(
    String mark, String bundleId, String fromSpotId, String pileId, Way way, int people) {}
