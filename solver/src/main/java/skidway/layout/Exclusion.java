package skidway.layout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import skidway.geometry.NearPairs;
import skidway.geometry.Rectangle;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Footprint;
import skidway.site.Spot;

/**
 * Knows which spots must not be used together (spotsApart): their stacks would stand nearer than
 * the gap, or one on the other's open strip. Strips may share ground. Spots are numbered as listed.
 */
public final class Exclusion {
  private final BitSet[] excluded;

  private Exclusion(BitSet[] excluded) {
    this.excluded = excluded;
  }

  public static Exclusion of(List<Spot> spots, Settings settings) {
    double gapM = settings.get(Setting.STACK_GAP);
    List<Body> bodies = spots.stream().map(Body::of).toList();
    List<List<Footprint>> covered = new ArrayList<>();
    BitSet[] excluded = new BitSet[spots.size()];
    for (int i = 0; i < excluded.length; i++) {
      excluded[i] = new BitSet(excluded.length);
      covered.add(List.of(spots.get(i).footprint(), spots.get(i).strip()));
    }
    NearPairs.find(
        covered,
        gapM,
        (a, b) -> {
          if (!apart(bodies.get(a), bodies.get(b), gapM)) {
            excluded[a].set(b);
            excluded[b].set(a);
          }
        });
    return new Exclusion(excluded);
  }

  /** The numbers of all spots that a spot rules out, lowest first; never its own. */
  public int[] of(int spot) {
    return excluded[spot].stream().toArray();
  }

  private static boolean apart(Body a, Body b, double gapM) {
    return !a.stack.meets(b.stack)
        && !a.stack.meets(b.strip)
        && !b.stack.meets(a.strip)
        && a.stack.gapM(b.stack) >= gapM - Rectangle.TOUCH_M;
  }

  private record Body(Rectangle stack, Rectangle strip) {
    static Body of(Spot spot) {
      return new Body(Rectangle.of(spot.footprint()), Rectangle.of(spot.strip()));
    }
  }
}
