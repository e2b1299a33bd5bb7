package skidway.staging;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.timber.Bundle;
import skidway.units.Figures;

/**
 * Says why a bundle has no spot: which rules turn it away from how many spots, and which of them
 * binds, that is, stands alone between the bundle and most spots.
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
    Map<Rule, Integer> alone = new EnumMap<>(Rule.class);
    for (int s = 0; s < board.spotCount(); s++) {
      List<Rule> rules = objection.against(number, s);
      rules.forEach(rule -> turnedAway.merge(rule, 1, Integer::sum));
      if (rules.size() == 1) {
        alone.merge(rules.get(0), 1, Integer::sum);
      }
    }
    Rule binds =
        (alone.isEmpty() ? turnedAway : alone)
            .entrySet().stream()
                .max(Map.Entry.comparingByValue())
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
}
