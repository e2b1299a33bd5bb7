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
    this.fit = new BundleFit(board.task, board.lifts);
  }

  /** The rules, or none if the bundle may lie there. The bundle itself must lie nowhere. */
  List<Rule> against(int bundle, int spot) {
    if (board.placeMs[bundle][spot] == Board.REFUSED) {
      List<Rule> refusals = fit.refusals(board.bundles.get(bundle), board.spots.get(spot));
      return refusals.isEmpty() ? List.of(Rule.PATHS_OPEN) : refusals;
    }
    if (occupancy.count(spot) == 0 && !occupancy.free(spot)) {
      return List.of(Rule.SPOTS_APART);
    }
    occupancy.put(bundle, spot);
    boolean stackLegal = occupancy.stack(spot).legal();
    boolean allLegal = occupancy.legal();
    occupancy.take(bundle);
    if (!stackLegal) {
      return List.of(stackRule(bundle, spot));
    }
    return allLegal ? List.of() : List.of(Rule.PATHS_OPEN);
  }

  private Rule stackRule(int bundle, int spot) {
    double height = board.bundles.get(bundle).heightM() + board.bearerM;
    double mass = board.massKg[bundle];
    double floor = board.onEndM2[bundle];
    for (int i = 0; i < occupancy.count(spot); i++) {
      int member = occupancy.member(spot, i);
      height += board.bundles.get(member).heightM() + board.bearerM;
      mass += board.massKg[member];
      floor += board.onEndM2[member];
    }
    if (mass > board.massLimitKg[spot]) {
      return Rule.SPOT_MASS;
    }
    if (board.rack[spot]) {
      return floor > board.rackFloorM2[spot] ? Rule.RACK_ROOM : Rule.ZONE_LOAD;
    }
    if (height > board.stackHeightM) {
      return Rule.STACK_HEIGHT;
    }
    return occupancy.evaluator().supportsInSomeOrder(bundle, spot, occupancy)
        ? Rule.ZONE_LOAD
        : Rule.TIER_SUPPORT;
  }
}
