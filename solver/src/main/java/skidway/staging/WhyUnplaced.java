package skidway.staging;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.timber.Bundle;
import skidway.units.Figures;

/**
 * Says why a bundle has no spot: which rules turn it away from how many spots, and which of them
 * binds, that is, stands alone between the bundle and most spots.
 */
final class WhyUnplaced {
  private final Board board;
  private final Occupancy occupancy;
  private final Objection objection;
  private final Remedy remedy;
  private final RuledOut ruledOut;

  WhyUnplaced(Occupancy occupancy) {
    this.board = occupancy.board;
    this.occupancy = occupancy;
    this.objection = new Objection(occupancy);
    this.remedy = new Remedy(board);
    this.ruledOut = new RuledOut(board.task);
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
            figures.mass(bundle.mass().highKg()));
    double longestRackM = board.task.settings().get(Setting.RACK_PIECE_LENGTH);
    if (board.spotCount() == 0 || (noStackSpots() && bundle.longestPieceM() > longestRackM)) {
      return withoutAnySpot(number, who);
    }
    Map<Rule, Integer> turnedAway = new EnumMap<>(Rule.class);
    Map<Rule, Integer> alone = new EnumMap<>(Rule.class);
    int open = 0;
    int noWay = 0;
    int bearsNothing = 0;
    for (int s = 0; s < board.spotCount(); s++) {
      List<Rule> rules = objection.against(number, s);
      open += rules.isEmpty() ? 1 : 0;
      noWay += board.hasNoWay(number, s) ? 1 : 0;
      bearsNothing += rules.contains(Rule.TIER_SUPPORT) && bearsNothingNew(s) ? 1 : 0;
      rules.forEach(rule -> turnedAway.merge(rule, 1, Integer::sum));
      if (rules.size() == 1) {
        alone.merge(rules.get(0), 1, Integer::sum);
      }
    }
    Rule binding = open > 0 ? Rule.PATHS_OPEN : binding(turnedAway, alone);
    String sentence = who + ": " + counts(turnedAway, open, noWay) + bearsNothing(bearsNothing);
    return new Unplaced(bundle.id(), binding, sentence + " " + remedy.of(number, binding));
  }

  /** Whether something lies there whose bands are cut, or that is locked. */
  private boolean bearsNothingNew(int spot) {
    return IntStream.range(0, occupancy.count(spot))
        .anyMatch(i -> board.bearsNothingNew[occupancy.member(spot, i)]);
  }

  private static String bearsNothing(int spots) {
    return spots == 0
        ? ""
        : " On "
            + spots
            + " of them lies a bundle that is open or locked, which bears nothing new.";
  }

  private Unplaced withoutAnySpot(int number, String who) {
    Bundle bundle = board.bundles.get(number);
    Rule rule = ruledOut.rule(bundle).orElse(Rule.INSIDE_ZONE);
    String room =
        rule == Rule.INSIDE_ZONE
            ? ": no deck or yard has room for it. "
            : ": " + rule.id() + " leaves no room for it on any deck or yard. ";
    return new Unplaced(bundle.id(), rule, who + room + remedy.of(number, rule));
  }

  private boolean noStackSpots() {
    for (boolean rack : board.rack) {
      if (!rack) {
        return false;
      }
    }
    return true;
  }

  private String counts(Map<Rule, Integer> turnedAway, int open, int noWay) {
    if (open > 0) {
      return String.format(
          Locale.ROOT,
          "%d of %d spots would take it, but with it there a path would be shut or a bundle would"
              + " have no place to wait.",
          open,
          board.spotCount());
    }
    String rules =
        turnedAway.entrySet().stream()
            .map(e -> e.getKey().id() + " at " + e.getValue())
            .collect(Collectors.joining(", "));
    String ways =
        noWay > 0
            ? String.format(
                Locale.ROOT, " From %d of them there is no way on foot to its walls.", noWay)
            : "";
    return String.format(
        Locale.ROOT, "of %d spots none is left (%s).%s", board.spotCount(), rules, ways);
  }

  /** Spots of another size say nothing about what keeps it off those that would fit. */
  private static Rule binding(Map<Rule, Integer> turnedAway, Map<Rule, Integer> alone) {
    Map<Rule, Integer> fitting = new EnumMap<>(alone);
    fitting.keySet().removeAll(EnumSet.of(Rule.FITS_SPOT, Rule.RACK_LENGTH, Rule.RACK_ROOM));
    Map<Rule, Integer> counted = fitting.isEmpty() ? alone : fitting;
    return (counted.isEmpty() ? turnedAway : counted)
        .entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey).orElseThrow();
  }
}
