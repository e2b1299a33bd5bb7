package skidway.staging;

import skidway.limits.PickHeight;
import skidway.limits.TeamLift;
import skidway.plan.Teams;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.timber.Piece;

/**
 * Prices handling in person-milliseconds: whole numbers, so that sums do not depend on their order
 * and the score, the reasons and the plan's hours agree to the unit.
 */
public final class CrewTime {
  private final TeamLift team;
  private final double secondsPerMetre;
  private final double worstPickS;
  private final double rehandleS;
  private final double rackPieceS;
  private final double liftS;
  private final double machineMps;
  private final double machineCrew;
  private final double retagS;
  private final double layPieceS;
  private final double pileSetUpS;

  public CrewTime(Settings settings) {
    team = Teams.under(settings);
    secondsPerMetre =
        1 / settings.get(Setting.LOADED_SPEED) + 1 / settings.get(Setting.EMPTY_SPEED);
    worstPickS = settings.get(Setting.PICK_TIME);
    rehandleS = settings.get(Setting.REHANDLE_PIECE);
    rackPieceS = settings.get(Setting.RACK_PIECE);
    liftS = settings.get(Setting.MACHINE_LIFT);
    machineMps = settings.get(Setting.MACHINE_SPEED);
    machineCrew = settings.get(Setting.MACHINE_CREW);
    retagS = settings.get(Setting.RETAG);
    pileSetUpS = settings.get(Setting.PILE_SET_UP);
    layPieceS = settings.get(Setting.LAY_PIECE);
  }

  /** People who carry a piece. */
  public int carriers(Piece piece) {
    return team.people(piece.mass().likelyKg(), piece.lengthM());
  }

  /** So many people carrying a piece over a walking distance and walking back. */
  public long carryMs(int people, double metres) {
    return millis(people * metres * secondsPerMetre);
  }

  /** So many people picking one piece that lies so high up. */
  public long pickMs(int people, double heightM) {
    return millis(people * worstPickS * (1 - PickHeight.factor(heightM)));
  }

  /** Moving pieces aside and back. */
  public long rehandleMs(int pieces) {
    return millis(pieces * rehandleS);
  }

  /** Standing pieces up in a rack. */
  public long rackMs(int pieces) {
    return millis(pieces * rackPieceS);
  }

  /** Laying pieces straight in a pile, or onto a load for the machine. */
  public long layMs(int pieces) {
    return millis(pieces * layPieceS);
  }

  /** Bearers and stickers for a pile. */
  public long pileMs() {
    return millis(pileSetUpS);
  }

  /** One lift, with a drive of the machine there and back. */
  public long liftMs(double driveMetres) {
    return millis((liftS + 2 * driveMetres / machineMps) * machineCrew);
  }

  /** Changing the tags of a bundle. */
  long retagMs() {
    return millis(retagS);
  }

  private static long millis(double seconds) {
    return Math.round(seconds * 1000);
  }
}
