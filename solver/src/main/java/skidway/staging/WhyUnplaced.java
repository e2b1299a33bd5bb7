package skidway.staging;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.timber.Bundle;
import skidway.units.Figures;

/**
 * Says why a bundle has no spot: which rule turns it away from how many spots, and which of them
 * binds, that is, comes into play last and would free most spots if it gave way.
 */
final class WhyUnplaced {
  private final Board board;
  private final Objection objection;

  WhyUnplaced(Occupancy occupancy) {
    this.board = occupancy.board;
    this.objection = new Objection(occupancy);
  }

  Unplaced of(int number) {
    Bundle bundle = board.bundles.get(number);
    Figures figures = board.task.figures();
    String who =
        String.format(
            Locale.ROOT,
            "%s (%s long, %s high, %s)",
            bundle.id(),
            figures.length(bundle.lengthM()),
            figures.length(bundle.heightM()),
            figures.mass(bundle.massKg()));
    if (board.spotCount() == 0) {
      return new Unplaced(
          bundle.id(), Rule.INSIDE_ZONE, who + ": no deck or yard has room for any spot.");
    }
    Map<Rule, Integer> turnedAway = new EnumMap<>(Rule.class);
    for (int s = 0; s < board.spotCount(); s++) {
      objection.against(number, s).ifPresent(rule -> turnedAway.merge(rule, 1, Integer::sum));
    }
    Rule binds =
        turnedAway.entrySet().stream()
            .max(
                Comparator.comparing((Map.Entry<Rule, Integer> e) -> hurdle(e.getKey()))
                    .thenComparing(Map.Entry::getValue))
            .map(Map.Entry::getKey)
            .orElse(Rule.SPOTS_APART);
    String counts =
        turnedAway.entrySet().stream()
            .map(e -> e.getKey().id() + " at " + e.getValue())
            .collect(Collectors.joining(", "));
    return new Unplaced(
        bundle.id(),
        binds,
        String.format(
            Locale.ROOT, "%s: of %d spots none is left (%s).", who, board.spotCount(), counts));
  }

  /** Rules that refuse the bundle even on an empty site are the lower hurdles. */
  private static int hurdle(Rule rule) {
    return switch (rule) {
      case FITS_SPOT, RACK_LENGTH -> 0;
      case MACHINE_REACH -> 1;
      case MACHINE_CAPACITY -> 2;
      default -> 3;
    };
  }
}
