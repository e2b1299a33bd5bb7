package skidway.plan;

import skidway.limits.TeamLift;
import skidway.rules.Setting;
import skidway.rules.Settings;

/** Puts the numbers of a job into the rule for teams. */
public final class Teams {
  private Teams() {}

  public static TeamLift under(Settings settings) {
    return new TeamLift(
        settings.get(Setting.LIFT_PER_PERSON),
        settings.get(Setting.TEAM_OF_TWO),
        settings.get(Setting.TEAM_OF_THREE),
        (int) settings.get(Setting.TEAM_MOST),
        settings.get(Setting.ONE_PERSON_LENGTH));
  }
}
