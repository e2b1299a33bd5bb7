package skidway.staging;

import java.util.List;
import skidway.rules.Rule;

/**
 * Says which rules speak against one more bundle on a spot while all others stay where they are.
 */
final class Objection {
  private final Occupancy occupancy;
  private final Board board;
  private final BundleFit fit;

  Objection(Occupancy occupancy) {
    this.occupancy = occupancy;
    this.board = occupancy.board;
    this.fit = new BundleFit(board);
  }

  /** The rules, or none if the bundle may lie there. The bundle itself must lie nowhere. */
  List<Rule> against(int bundle, int spot) {
    if (board.placeMs[bundle][spot] == Board.REFUSED) {
      List<Rule> refusals = fit.refusals(bundle, spot);
      return refusals.isEmpty() ? List.of(Rule.PATHS_OPEN) : refusals;
    }
    if (occupancy.blocked(bundle, spot)) {
      return List.of(Rule.SPOTS_APART);
    }
    int brokenBefore = occupancy.brokenRules();
    occupancy.put(bundle, spot);
    List<Rule> rules = List.of();
    if (!occupancy.stack(spot).legal()) {
      rules = List.of(board.rack[spot] ? rackRule(spot) : occupancy.refusal(spot));
    } else if (occupancy.overloaded()) {
      rules = List.of(occupancy.overloadedRule());
    } else if (occupancy.brokenRules() > brokenBefore) {
      rules = List.of(Rule.PATHS_OPEN);
    }
    occupancy.take(bundle);
    return rules;
  }

  private Rule rackRule(int spot) {
    double massKg = 0;
    double floorM2 = 0;
    for (int i = 0; i < occupancy.count(spot); i++) {
      massKg += board.massKg[occupancy.member(spot, i)];
      floorM2 += board.onEndM2[occupancy.member(spot, i)];
    }
    if (massKg > board.massLimitKg[spot]) {
      return Rule.SPOT_MASS;
    }
    return floorM2 > board.rackFloorM2[spot] ? Rule.RACK_ROOM : board.loadRule(spot);
  }
}
