package skidway.job;

import java.util.List;
import skidway.site.Deck;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Steps;
import skidway.site.Zone;

/**
 * Checks that a deck's steps lead from the ground onto it, and that decks lie beside each other.
 */
record DeckChecks(Deck deck) {

  /** The top is on the boards, the foot is not. */
  void steps(Read<Steps> read) {
    Steps s = read.value();
    Fields at = read.at();
    if (!isOnBoards(s.top())) {
      at.report(
          at.at("top"),
          "steps \"" + s.id() + "\" whose top is not on deck \"" + deck.id() + '"',
          "people step off at the top onto the deck, not beside it or into a floor opening",
          "correct \"top\", or give the steps to the deck they lead to");
    }
    if (Inside.of(deck.outline()).holdsWithin(s.foot())) {
      at.report(
          at.at("foot"),
          "steps \"" + s.id() + "\" whose foot is on deck \"" + deck.id() + '"',
          "the foot is off the deck that the steps lead to",
          "correct \"foot\"; it may be that \"foot\" and \"top\" are swapped");
    }
  }

  private boolean isOnBoards(Point p) {
    return Inside.of(deck.outline()).holds(p)
        && deck.openings().stream().noneMatch(o -> Inside.of(o.outline()).holdsWithin(p));
  }

  /**
   * One problem for each deck, or yard, that lies over an earlier one: two allowances for one
   * place.
   *
   * @param kind deck or yard
   */
  static void apart(String kind, List<? extends Read<? extends Zone>> zones) {
    for (int i = 1; i < zones.size(); i++) {
      Read<? extends Zone> zone = zones.get(i);
      zones.subList(0, i).stream()
          .map(Read::value)
          .filter(other -> overlap(zone.value().outline(), other.outline()))
          .findFirst()
          .ifPresent(other -> report(kind, zone, other));
    }
  }

  private static void report(String kind, Read<? extends Zone> zone, Zone other) {
    zone.at()
        .report(
            zone.at().at("outline"),
            kind + " \"" + zone.value().id() + "\" over " + kind + " \"" + other.id() + '"',
            kind + "s lie beside each other and may touch",
            "correct the corners of one of them, or make them one " + kind);
  }

  /**
   * Whether the insides meet: then some part of one's edge is inside the other, or both have the
   * same edge.
   */
  private static boolean overlap(Outline a, Outline b) {
    if (!boxesMeet(a, b)) {
      return false;
    }
    Inside inA = Inside.of(a);
    Inside inB = Inside.of(b);
    return entersOther(a, inB) || entersOther(b, inA) || sameEdge(a, inB);
  }

  private static boolean entersOther(Outline outline, Inside other) {
    return OutlineCheck.sides(outline).stream()
        .anyMatch(side -> other.middles(side).stream().anyMatch(other::holdsWithin));
  }

  private static boolean sameEdge(Outline outline, Inside other) {
    return OutlineCheck.sides(outline).stream().allMatch(other::holds);
  }

  private static boolean boxesMeet(Outline a, Outline b) {
    return rangesMeet(a, b, true) && rangesMeet(a, b, false);
  }

  private static boolean rangesMeet(Outline a, Outline b, boolean alongX) {
    return least(a, alongX) < most(b, alongX) && least(b, alongX) < most(a, alongX);
  }

  private static double least(Outline outline, boolean alongX) {
    return outline.corners().stream().mapToDouble(p -> alongX ? p.x() : p.y()).min().orElseThrow();
  }

  private static double most(Outline outline, boolean alongX) {
    return outline.corners().stream().mapToDouble(p -> alongX ? p.x() : p.y()).max().orElseThrow();
  }
}
