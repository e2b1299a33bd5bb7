package skidway.audit;

import java.util.stream.IntStream;
import skidway.rules.Setting;
import skidway.timber.Piece;

/**
 * Works out how many people carry a piece: two lift two thirds of what both could lift alone, three
 * or more half of it (UK guidance L23).
 */
final class Team {
  private static final double SHARE_ROUNDING = 1e-9;

  private final double oneKg;
  private final double two;
  private final double three;
  private final int most;
  private final double oneM;

  Team(Scene scene) {
    oneKg = scene.setting(Setting.LIFT_PER_PERSON);
    two = scene.setting(Setting.TEAM_OF_TWO);
    three = scene.setting(Setting.TEAM_OF_THREE);
    most = (int) scene.setting(Setting.TEAM_MOST);
    oneM = scene.setting(Setting.ONE_PERSON_LENGTH);
  }

  /** People for what a piece likely weighs; the most, with a device, where none are enough. */
  int people(Piece piece) {
    // Of exactly a team's share a piece is not too heavy, also where rounding makes it a trifle so.
    double shares = piece.mass().likelyKg() / oneKg - SHARE_ROUNDING;
    int least = piece.lengthM() > oneM ? 2 : 1;
    return IntStream.rangeClosed(least, most)
        .filter(people -> shares(people) >= shares)
        .findFirst()
        .orElse(Math.max(least, most));
  }

  /** The largest team. */
  int most() {
    return most;
  }

  /** What the largest team lifts, kg. */
  double mostKg() {
    return shares(most) * oneKg;
  }

  /** How many times as much as one a team lifts: never less than a smaller one. */
  private double shares(int people) {
    return IntStream.rangeClosed(1, people)
        .mapToDouble(n -> n == 1 ? 1 : n == 2 ? 2 * two : n * three)
        .max()
        .orElse(1);
  }
}
