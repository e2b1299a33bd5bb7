package skidway.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import skidway.plan.Reason;
import skidway.rules.Rule;
import skidway.site.Spot;
import skidway.timber.Bundle;
import skidway.units.Figures;

/** Explains, bundle by bundle, why it lies where it lies. */
final class Reasons {
  /** Spots tried for the next best place, cheapest first. */
  private static final int MOST_TRIED = 400;

  /** A cheaper spot is worth a sentence from half a minute on. */
  private static final long WORTH_TELLING_MS = 30_000;

  private final Occupancy occupancy;
  private final Board board;
  private final Map<Integer, Spot> named;
  private final Figures figures;
  private final Objection objection;
  private final BearerAdvice advice;

  Reasons(Occupancy occupancy, Map<Integer, Spot> named) {
    this.occupancy = occupancy;
    this.board = occupancy.board;
    this.named = named;
    this.figures = board.task.figures();
    this.objection = new Objection(occupancy);
    this.advice = new BearerAdvice(board);
  }

  List<Reason> all() {
    List<Reason> reasons = new ArrayList<>();
    for (int b = 0; b < board.bundleCount(); b++) {
      if (occupancy.spotOf(b) != Occupancy.NOWHERE) {
        reasons.add(of(b, occupancy.spotOf(b)));
      }
    }
    return reasons;
  }

  private Reason of(int bundle, int spot) {
    List<String> sentences = new ArrayList<>();
    long planMs = occupancy.costMs();
    StackCost stack = occupancy.stack(spot);
    sentences.add(where(bundle, spot));
    if (!board.rack[spot] && board.insideMs[bundle] > 0) {
      sentences.add(digging(bundle));
    }
    occupancy.take(bundle);
    long costMs = planMs - occupancy.costMs();
    long atOnceMs = costMs - board.placeMs[bundle][spot];
    if (atOnceMs > 0) {
      sentences.add(
          String.format(
              Locale.ROOT,
              "In this stack it causes %s of picking, rehandling and set-downs.",
              figures.minutes(atOnceMs / 1000.0)));
    }
    Next next = next(bundle, spot, costMs);
    if (next.cheaperButRefused() != null) {
      sentences.add(next.cheaperButRefused());
    }
    sentences.add(nextSentence(next));
    occupancy.put(bundle, spot);
    if (stack.order().indexOf(bundle) == 0) {
      advice.of(spot, bundle).ifPresent(sentences::add);
    }
    if (!occupancy.stack(spot).equals(stack) || occupancy.costMs() != planMs) {
      throw new IllegalStateException("Explaining a plan must not change it.");
    }
    return new Reason(
        board.bundles.get(bundle).id(),
        named.get(spot).id(),
        costMs / 1000.0,
        next.spot() == Occupancy.NOWHERE ? "" : nameOf(next.spot()),
        next.spot() == Occupancy.NOWHERE
            ? OptionalDouble.empty()
            : OptionalDouble.of(next.moreMs() / 1000.0),
        sentences);
  }

  private String where(int bundle, int spot) {
    Bundle what = board.bundles.get(bundle);
    double metres = 0;
    for (int pull : board.pulls[bundle]) {
      metres += board.metres[spot][pull] / board.pulls[bundle].length;
    }
    String tier =
        board.rack[spot]
            ? "on end"
            : String.format(
                Locale.ROOT,
                "tier %d of %d",
                occupancy.stack(spot).order().indexOf(bundle) + 1,
                occupancy.count(spot));
    return String.format(
        Locale.ROOT,
        "%s, %s: %d pieces, %s to walk on average, %s of carrying.",
        named.get(spot).id(),
        tier,
        what.pieces().size(),
        figures.length(metres),
        figures.minutes(board.carryMs[bundle][spot] / 1000.0));
  }

  private String digging(int bundle) {
    return String.format(
        Locale.ROOT,
        "%d of them lie over one of a lower layer that is needed earlier: %s of moving aside, on any"
            + " stack.",
        board.digging[bundle].inside,
        figures.minutes(board.insideMs[bundle] / 1000.0));
  }

  private record Next(int spot, long moreMs, @Nullable String cheaperButRefused) {}

  /**
   * The best other spot with all else as planned, and why the cheapest one for carrying was not
   * taken.
   */
  private Next next(int bundle, int spot, long costMs) {
    int best = Occupancy.NOWHERE;
    long bestMs = Long.MAX_VALUE;
    String refused = null;
    int tried = 0;
    for (int other : board.near[bundle]) {
      if (tried++ > MOST_TRIED || board.placeMs[bundle][other] >= bestMs) {
        break;
      }
      if (other == spot) {
        continue;
      }
      List<Rule> rules = objection.against(bundle, other);
      if (!rules.isEmpty()) {
        if (refused == null
            && board.placeMs[bundle][spot] - board.placeMs[bundle][other] > WORTH_TELLING_MS) {
          refused = refusedSentence(bundle, other, spot, rules.get(0));
        }
        continue;
      }
      long before = occupancy.costMs();
      occupancy.put(bundle, other);
      long ms = occupancy.costMs() - before;
      occupancy.take(bundle);
      if (ms < bestMs) {
        best = other;
        bestMs = ms;
      }
    }
    return new Next(best, best == Occupancy.NOWHERE ? 0 : bestMs - costMs, refused);
  }

  private String refusedSentence(int bundle, int other, int spot, Rule rule) {
    long saves = board.placeMs[bundle][spot] - board.placeMs[bundle][other];
    return String.format(
        Locale.ROOT,
        "%s would save %s, but %s is in the way: %s",
        capital(nameOf(other)),
        figures.minutes(saves / 1000.0),
        rule.id(),
        rule.sentence());
  }

  private String nextSentence(Next next) {
    if (next.spot() == Occupancy.NOWHERE) {
      return "No other spot is open to it with the rest as planned.";
    }
    if (next.moreMs() < 0) {
      return String.format(
          Locale.ROOT,
          "Moving it alone to %s would save %s; the search ended before it tried that.",
          nameOf(next.spot()),
          figures.minutes(-next.moreMs() / 1000.0));
    }
    return String.format(
        Locale.ROOT,
        "Next best is %s, %s more in all.",
        nameOf(next.spot()),
        figures.minutes(next.moreMs() / 1000.0));
  }

  /** The code of a used spot, or words for one that the plan leaves empty. */
  private String nameOf(int spot) {
    Spot code = named.get(spot);
    if (code != null) {
      return code.id();
    }
    Spot unused = board.spots.get(spot);
    return board.task.site().spots().isEmpty()
        ? "an unused place on " + unused.zoneId()
        : unused.id();
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
