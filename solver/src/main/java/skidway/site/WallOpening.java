package skidway.site;

/**
 * A door or window in a wall.
 *
 * @param fromM distance of its left edge from the wall's start (its left end seen from outside)
 * @param sillM height of its lower edge above the wall's foot
 * @param headM height of its upper edge above the wall's foot
 * @param door whether people can walk through it
 */
public record WallOpening(
    String id, double fromM, double widthM, double sillM, double headM, boolean door) {
  public double toM() {
    return fromM + widthM;
  }
}
