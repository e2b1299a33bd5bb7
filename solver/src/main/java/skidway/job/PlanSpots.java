package skidway.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.site.Footprint;
import skidway.site.OpenSide;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.units.Nearest;

/**
 * Reads the spots of a plan file, which are written out in full in SI. In place of a stack's spot a
 * person may write just the id of a spot that the site gives.
 */
record PlanSpots(List<Spot> given) {

  Optional<Spot> ofStack(Fields stack) {
    String allowed = "\"spot\" is an object in braces or the id of a spot that site.json gives";
    Optional<LocatedNode> node = stack.node("spot", allowed);
    if (node.isPresent() && node.get() instanceof LocatedNode.Text text) {
      String id = text.value().strip();
      Optional<Spot> spot = given.stream().filter(s -> s.id().equals(id)).findFirst();
      if (spot.isEmpty()) {
        String hint = Nearest.hint(id, given.stream().map(Spot::id).toList());
        stack.report(
            text.place(),
            text.words() + " as \"spot\"" + hint,
            allowed,
            "write the spot out as in the other stacks, or name one of site.json");
      }
      return spot;
    }
    return node.isEmpty() ? Optional.empty() : stack.object("spot", "spot").flatMap(this::spot);
  }

  Optional<Spot> spot(Fields f) {
    String id = f.reference("id");
    String zone = f.reference("zone");
    SpotKind kind = f.choice("kind", SpotKind.STACK);
    Point centre = Points.point(f, "centreM");
    double headingDeg = f.quantity("headingDeg", Bounds.DIRECTION);
    double lengthM = f.quantity("lengthM", Bounds.SPOT_LENGTH);
    double widthM = f.quantity("widthM", Bounds.SPOT_WIDTH);
    OpenSide openSide = f.choice("openSide", OpenSide.LEFT);
    double stripM = f.quantity("stripM", Bounds.STRIP);
    OptionalDouble massLimitKg = f.optional("massLimitKg", Bounds.MASS_LIMIT);
    return f.finishStrictly(
        () ->
            new Spot(
                id,
                zone,
                kind,
                new Footprint(centre, headingDeg, lengthM, widthM),
                openSide,
                stripM,
                massLimitKg));
  }
}
