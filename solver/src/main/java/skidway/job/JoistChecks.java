package skidway.job;

import java.util.List;
import skidway.site.Deck;
import skidway.site.Joists;
import skidway.site.Point;

/** Checks that the supports of joists lie one behind the other and that the deck lies on them. */
final class JoistChecks {
  /** A floor cantilevers a little; more is a mistake in a support or in the direction. */
  private static final double BEYOND_M = 0.6;

  private static final double APART_M = 0.3;

  /**
   * 26 ft, as far as span tables of sawn joists go (from memory, confirm). A longer span is a
   * support that was forgotten, and would seem to bear more the longer it is.
   */
  private static final double LONGEST_M = 7.92;

  /** A support that lies farther beside the deck is another deck's. */
  private static final double BESIDE_M = 1;

  private JoistChecks() {}

  static void carry(Read<Joists> read, Deck deck) {
    Fields f = read.at();
    Point way = Point.unit(read.value().directionDeg());
    double[] at = along(read.value().supports(), way);
    for (int i = 1; i < at.length; i++) {
      if (at[i] - at[i - 1] < APART_M) {
        f.report(
            f.at("supports"),
            "two supports at one place along the joists of deck \"" + deck.id() + '"',
            "supports lie " + f.length(APART_M) + " or more apart along the joists",
            "keep one point a support, and check \"direction\"");
        return;
      }
      if (at[i] - at[i - 1] > LONGEST_M) {
        f.report(
            f.at("supports"),
            "joists of deck \"" + deck.id() + "\" that span " + f.length(at[i] - at[i - 1]),
            "sawn joists span at most " + f.length(LONGEST_M),
            "add the support between, or correct \"direction\"");
        return;
      }
    }
    beside(read, deck, way.turnedLeft());
    double[] corners = along(deck.outline().corners(), way);
    double beyondM = Math.max(at[0] - corners[0], corners[corners.length - 1] - at[at.length - 1]);
    if (beyondM > BEYOND_M) {
      f.report(
          f.at("supports"),
          "deck \"" + deck.id() + "\" reaching " + f.length(beyondM) + " beyond its last support",
          "joists reach at most " + f.length(BEYOND_M) + " beyond their outermost supports",
          "add the missing support, or correct \"direction\"");
    }
  }

  private static void beside(Read<Joists> read, Deck deck, Point across) {
    Fields f = read.at();
    double[] at = along(read.value().supports(), across);
    double[] corners = along(deck.outline().corners(), across);
    double offM = Math.max(corners[0] - at[0], at[at.length - 1] - corners[corners.length - 1]);
    if (offM > BESIDE_M) {
      f.report(
          f.at("supports"),
          "a support point " + f.length(offM) + " beside deck \"" + deck.id() + '"',
          "points of supports lie under the deck",
          "correct the point, or \"direction\"");
    }
  }

  /** How far along the joists points lie, in order. */
  private static double[] along(List<Point> points, Point way) {
    return points.stream().mapToDouble(way::dot).sorted().toArray();
  }
}
