package skidway.layout;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import skidway.geometry.NearPairs;
import skidway.geometry.Rectangle;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.SpotKind;

/**
 * Knows which spots must not be used together: their stacks would stand nearer than the gap, or one
 * on the other's open strip (spotsApart; strips may share ground); or they would bear on the same
 * part of a deck (bearingApart). Spots are numbered as listed.
 *
 * <p>What a stack bears on is taken as large as its spot allows, so any bundles may come.
 */
public final class Exclusion {
  private final List<Body> bodies;
  private final double gapM;
  private final BitSet[] excluded;

  private Exclusion(List<Body> bodies, double gapM) {
    this.bodies = bodies;
    this.gapM = gapM;
    excluded = new BitSet[bodies.size()];
    for (int i = 0; i < excluded.length; i++) {
      excluded[i] = new BitSet(excluded.length);
    }
  }

  public static Exclusion of(List<Spot> spots, Site site, Settings settings) {
    Set<String> decks = site.decks().stream().map(Deck::id).collect(Collectors.toSet());
    double reachM = settings.get(Setting.BEARER_REACH);
    List<List<Footprint>> covered =
        spots.stream()
            .map(spot -> List.of(spot.footprint(), spot.strip(), bearingOf(spot, reachM)))
            .toList();
    List<Body> bodies = spots.stream().map(spot -> Body.of(spot, decks, reachM)).toList();
    Exclusion exclusion = new Exclusion(bodies, settings.get(Setting.STACK_GAP));
    NearPairs.find(covered, exclusion.gapM, exclusion::exclude);
    return exclusion;
  }

  /** The numbers of all spots that a spot rules out, lowest first; never its own. */
  public int[] of(int spot) {
    return excluded[spot].stream().toArray();
  }

  /** Which rule two spots that exclude each other would break, spotsApart if both. */
  public Rule rule(int a, int b) {
    return apart(bodies.get(a), bodies.get(b)) ? Rule.BEARING_APART : Rule.SPOTS_APART;
  }

  private void exclude(int a, int b) {
    Body one = bodies.get(a);
    Body other = bodies.get(b);
    if (!apart(one, other) || bearTogether(one, other)) {
      excluded[a].set(b);
      excluded[b].set(a);
    }
  }

  private boolean apart(Body a, Body b) {
    return !a.stack.meets(b.stack)
        && !a.stack.meets(b.strip)
        && !b.stack.meets(a.strip)
        && a.stack.gapM(b.stack) >= gapM - Rectangle.TOUCH_M;
  }

  private static boolean bearTogether(Body a, Body b) {
    return a.onDeck && b.onDeck && a.bearing.meets(b.bearing);
  }

  /**
   * The ground that is counted under a stack: its bearers stand out, the rails of a rack do not.
   */
  private static Footprint bearingOf(Spot spot, double reachM) {
    Footprint stack = spot.footprint();
    return spot.kind() == SpotKind.RACK
        ? stack
        : stack.resized(stack.lengthM(), stack.widthM() + 2 * reachM);
  }

  private record Body(Rectangle stack, Rectangle strip, Rectangle bearing, boolean onDeck) {
    static Body of(Spot spot, Set<String> decks, double reachM) {
      return new Body(
          Rectangle.of(spot.footprint()),
          Rectangle.of(spot.strip()),
          Rectangle.of(bearingOf(spot, reachM)),
          decks.contains(spot.zoneId()));
    }
  }
}
