package skidway.sheet;

import skidway.limits.TeamLift;
import skidway.plan.Teams;
import skidway.rules.Settings;
import skidway.timber.Piece;
import skidway.units.Figures;

/** Tells how many people take a piece, by the settings of the job. */
final class Team {
  private static final double ROUNDING = 1e-9;

  private final TeamLift lift;

  Team(Settings settings) {
    lift = Teams.under(settings);
  }

  /** For what it likely weighs. */
  int people(Piece piece) {
    return lift.people(piece.mass().likelyKg(), piece.lengthM());
  }

  /** Whether at its heaviest it is more than the largest team lifts. */
  boolean needsDevice(Piece piece) {
    return piece.mass().highKg() > lift.mostKg() * (1 + ROUNDING);
  }

  /** What the numbers of people on a sheet mean. */
  String heed(Figures figures) {
    return "People: for what the piece likely weighs; no number of people is safe for everybody. Take"
        + " more where the way is narrow, high or slippery. Device: at its heaviest it is more than "
        + mostPeople()
        + " people lift together ("
        + figures.mass(mostKg())
        + "). Local codes go before this list.";
  }

  int mostPeople() {
    return lift.mostPeople();
  }

  double mostKg() {
    return lift.mostKg();
  }
}
