package skidway.site;

import java.util.OptionalDouble;

/**
 * A place for one stack (or one standing rack): the footprint that bundles must fit into, and the
 * strip along one long side that stays free so that people can stand there and draw pieces out.
 *
 * @param id code painted on the ground and printed on tags
 * @param zoneId the deck or yard it lies on
 * @param stripM depth of the open strip
 * @param massLimitKg most that may stand here, when the site lead knows one
 */
public record Spot(
    String id,
    String zoneId,
    SpotKind kind,
    Footprint footprint,
    OpenSide openSide,
    double stripM,
    OptionalDouble massLimitKg) {

  /** The same place under another code. */
  public Spot called(String code) {
    return new Spot(code, zoneId, kind, footprint, openSide, stripM, massLimitKg);
  }

  /** The open strip, as long as the spot. */
  public Footprint strip() {
    double off = (footprint.widthM() + stripM) / 2;
    return new Footprint(
        footprint.centre().plus(towardsOpenSide().times(off)),
        footprint.headingDeg(),
        footprint.lengthM(),
        stripM);
  }

  /** Where people stand to draw pieces: the middle of the open strip. */
  public Point access() {
    return strip().centre();
  }

  /** Unit vector from the stack to its open side. */
  public Point towardsOpenSide() {
    Point left = footprint.along().turnedLeft();
    return openSide == OpenSide.LEFT ? left : left.times(-1);
  }
}
