package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import skidway.limits.RackRoom;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.timber.Bundle;

/** Says which rules keep a bundle off a spot even when it would lie there alone. */
final class BundleFit {
  private final Board board;
  private final Settings settings;

  BundleFit(Board board) {
    this.board = board;
    this.settings = board.task.settings();
  }

  /** All rules that refuse, in their order; none if the bundle may be put there. */
  List<Rule> refusals(int number, int place) {
    List<Rule> refusals = refusalsWhereItLies(number, place);
    if (!board.byHand() && board.home[number] != place) {
      Point centre = board.centre(place);
      Bundle bundle = board.bundles.get(number);
      refusals.addAll(board.lifts.refusals(bundle, board.massKg[number], centre));
    }
    return refusals;
  }

  /** The same without asking whether a machine can put it there. */
  List<Rule> refusalsWhereItLies(int number, int place) {
    Bundle bundle = board.bundles.get(number);
    double massKg = board.massKg[number];
    Spot spot = board.spots.get(place);
    List<Rule> refusals = new ArrayList<>();
    if (board.rack[place]) {
      inRack(bundle, massKg, place, refusals);
    } else {
      inStack(number, place, refusals);
    }
    OptionalDouble limitKg = spot.massLimitKg();
    refuse(limitKg.isPresent() && massKg > limitKg.getAsDouble(), Rule.SPOT_MASS, refusals);
    board.shared.brokenBy(board.share(place, number), massKg).ifPresent(refusals::add);
    refuse(board.byHand() && !board.hands.reaches(bundle, place), Rule.PATHS_OPEN, refusals);
    return refusals;
  }

  private void inStack(int number, int place, List<Rule> refusals) {
    Bundle bundle = board.bundles.get(number);
    Spot spot = board.spots.get(place);
    int footing = board.footing[place];
    boolean larger =
        bundle.lengthM() > spot.footprint().lengthM() + 1e-9
            || bundle.widthM() > spot.footprint().widthM() + 1e-9;
    refuse(larger, Rule.FITS_SPOT, refusals);
    double heightM = bundle.heightM() + settings.get(Setting.BEARER_HEIGHT);
    Rule tooHigh = board.isCapped(place) ? Rule.DECK_EDGE : Rule.STACK_HEIGHT;
    refuse(heightM > board.mostHeightM[place] + 1e-9, tooHigh, refusals);
    double slenderM = board.mostSlender[place] * Math.min(bundle.lengthM(), bundle.widthM());
    refuse(bundle.heightM() > slenderM + 1e-9, Rule.STACK_SLENDER, refusals);
    boolean overloads = board.massKg[number] > board.mostKg[footing][number] + 1e-9;
    refuse(overloads, board.loadRule(place), refusals);
    refuse(!board.footings.clearsGround(footing), Rule.GROUND_CLEARANCE, refusals);
  }

  private void inRack(Bundle bundle, double massKg, int place, List<Rule> refusals) {
    double longestM = settings.get(Setting.RACK_PIECE_LENGTH);
    refuse(bundle.longestPieceM() > longestM + 1e-9, Rule.RACK_LENGTH, refusals);
    double topM = settings.get(Setting.BEARER_HEIGHT) + bundle.longestPieceM();
    refuse(topM > board.mostHeightM[place] + 1e-9, Rule.DECK_EDGE, refusals);
    boolean full = RackRoom.floorM2(bundle) > board.rackFloorM2[place] + 1e-9;
    refuse(full, Rule.RACK_ROOM, refusals);
    refuse(massKg > board.rackMassKg[place] + 1e-9, board.loadRule(place), refusals);
  }

  private static void refuse(boolean broken, Rule rule, List<Rule> refusals) {
    if (broken) {
      refusals.add(rule);
    }
  }
}
