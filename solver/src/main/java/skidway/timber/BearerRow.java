package skidway.timber;

/**
 * The bearers under one bundle, square across it: how many, how far apart, how long.
 *
 * @param spacingM from the middle of one bearer to the next
 * @param endM from the bundle's end to the middle of the first bearer
 * @param lengthM of each bearer; what is more than the bundle's width stands out evenly
 */
public record BearerRow(int count, double spacingM, double endM, double lengthM) {
  /** No bearers: pieces that stand on end in a rack. */
  public static final BearerRow NONE = new BearerRow(0, 0, 0, 0);
}
