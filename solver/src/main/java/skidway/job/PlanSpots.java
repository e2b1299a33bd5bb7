package skidway.job;

import java.util.List;
import java.util.Optional;
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
    SpotKind kind = f.choice("kind", SpotKind.STACK);
    return f.finishStrictly(PlanFields.spot(f, id, kind));
  }
}
