package skidway.staging;

import java.util.Locale;
import java.util.Optional;
import skidway.rules.Rule;
import skidway.site.Deck;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.site.Zone;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;
import skidway.units.Figures;

/** Says how bearers laid otherwise would bend the joists under a stack less. */
final class BearerAdvice {
  /** A gain below this is not worth a word. */
  private static final double WORTH_TELLING = 0.9;

  /** Bearers farther from the ends of a bundle would let the ends sag. */
  private static final double MOST_END_SHARE = 0.25;

  private static final double STEP_M = 0.05;

  /** Bearers turned less than this from the joists lie along them. */
  private static final double ALONG_DEG = 20;

  private final Board board;

  BearerAdvice(Board board) {
    this.board = board;
  }

  /** A sentence about the bearers under a stack; none where they lie as well as can be. */
  Optional<String> of(int place, int lowest) {
    Spot spot = board.spots.get(place);
    Optional<Deck> deck =
        board.task.site().decks().stream().filter(d -> d.id().equals(spot.zoneId())).findFirst();
    if (board.rack[place] || deck.isEmpty() || deck.get().joists().isEmpty()) {
      return Optional.empty();
    }
    if (lieAlong(spot, deck.get())) {
      return Optional.of(
          "Its bearers lie along the joists; turned so that they cross the joists, more of them"
              + " would share the load.");
    }
    return fartherIn(spot, board.bundles.get(lowest));
  }

  /** Bearers lie square to the bundle. */
  private static boolean lieAlong(Spot spot, Deck deck) {
    Point bearer = spot.footprint().along().turnedLeft();
    Point joist = Point.unit(deck.joists().orElseThrow().directionDeg());
    double sine = Math.abs(bearer.cross(joist));
    return sine < Math.sin(Math.toRadians(ALONG_DEG));
  }

  private Optional<String> fartherIn(Spot spot, Bundle bundle) {
    BearerRow now = board.footings.underStack(board.footings.of(zoneOf(spot)), bundle, 0);
    BearerRow best = now;
    for (double endM = STEP_M; endM <= MOST_END_SHARE * bundle.lengthM(); endM += STEP_M) {
      double spacingM = (bundle.lengthM() - 2 * endM) / (now.count() - 1);
      BearerRow other = new BearerRow(now.count(), spacingM, endM, now.lengthM());
      if (board.footings.maySpace(other)
          && bendingShare(spot, bundle, other) < bendingShare(spot, bundle, best)) {
        best = other;
      }
    }
    double share = bendingShare(spot, bundle, best) / bendingShare(spot, bundle, now);
    if (share > WORTH_TELLING) {
      return Optional.empty();
    }
    Figures figures = board.task.figures();
    return Optional.of(
        String.format(
            Locale.ROOT,
            "Bearers %s in from its ends instead of %s would bend the joists %.0f %% less.",
            figures.length(best.endM()),
            figures.length(now.endM()),
            Math.floor(100 * (1 - share))));
  }

  private Zone zoneOf(Spot spot) {
    return board.task.site().zone(spot.zoneId()).orElseThrow();
  }

  /** The worst bending that a stack of one kilogram causes, as a share of what is allowed. */
  private double bendingShare(Spot spot, Bundle bundle, BearerRow row) {
    SharedLimits.Share share = board.shared.share(spot, bundle, row);
    double worst = 0;
    for (int i = 0; i < share.limits.length; i++) {
      if (board.shared.rule(share.limits[i]) == Rule.JOIST_BENDING) {
        worst = Math.max(worst, share.perKg[i] / board.shared.most(share.limits[i]));
      }
    }
    return worst;
  }
}
