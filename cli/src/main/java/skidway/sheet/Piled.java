package skidway.sheet;

/**
 * Where a piece lies on a pile by its wall when its turn comes.
 *
 * @param wave that brought it there
 * @param layer of the pile it lies in, 1 is the lowest
 */
public record Piled(String pileId, int wave, int layer, int layers) {}
