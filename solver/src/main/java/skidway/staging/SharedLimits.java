package skidway.staging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import skidway.limits.AreaLoad;
import skidway.limits.BearerLines;
import skidway.limits.JoistGrid;
import skidway.limits.JoistLoad;
import skidway.limits.JoistStrength;
import skidway.limits.LineLoad;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.Joists;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.site.Zone;
import skidway.timber.BearerRow;
import skidway.timber.Bundle;

/**
 * Limits that several stacks share: the bending and the shear of each span of a joist, the total of
 * a zone. What a stack adds to a sum is its mass times a factor that depends on the spot and on the
 * size of its lowest bundle.
 *
 * <p>For bending the sum is that of each stack's own highest moment: never less than the highest
 * moment of all together, but quick to keep. Where it is too much the moment is worked out exactly.
 */
final class SharedLimits {
  /** Kept back, so that figures rounded for a plan file stay within the limits. */
  private static final double RESERVE = 0.999;

  /** Newtons in a kilogram. */
  private static final double GRAVITY = AreaLoad.newtons(1);

  /**
   * A limit in the unit of its rule.
   *
   * @param spanM of the joist; 0 for other limits
   */
  private record Limit(Rule rule, double most, double spanM) {}

  private static final JoistLoad[] NOTHING = {};

  private final Task task;
  private final Footings footings;
  private final List<Limit> limits = new ArrayList<>();
  private final Map<String, Integer> totals = new HashMap<>();
  private final Map<String, JoistGrid> grids = new HashMap<>();

  /** Number of the first limit of a deck's joists. */
  private final Map<String, Integer> firstOfDeck = new HashMap<>();

  SharedLimits(Task task, Footings footings) {
    this.task = task;
    this.footings = footings;
    for (Zone zone : task.site().zones()) {
      zone.totalKg().ifPresent(kg -> totals.put(zone.id(), add(new Limit(Rule.ZONE_TOTAL, kg, 0))));
      if (zone instanceof Deck deck && deck.joists().isPresent()) {
        addJoists(deck, deck.joists().orElseThrow());
      }
    }
  }

  private int add(Limit limit) {
    limits.add(limit);
    return limits.size() - 1;
  }

  /** For each joist and span: bending, shear at its start, shear at its end. */
  private void addJoists(Deck deck, Joists joists) {
    JoistGrid grid = JoistGrid.of(joists, deck.outline());
    grids.put(deck.id(), grid);
    firstOfDeck.put(deck.id(), limits.size());
    for (int joist = 0; joist < grid.joists(); joist++) {
      for (int span = 0; span < grid.spans(); span++) {
        double spanM = grid.spanM(span);
        JoistStrength strength = JoistStrength.of(joists.design(), joists.spacingM(), spanM);
        add(new Limit(Rule.JOIST_BENDING, RESERVE * strength.momentNm(), spanM));
        add(new Limit(Rule.JOIST_SHEAR, RESERVE * strength.shearN(), spanM));
        add(new Limit(Rule.JOIST_SHEAR, RESERVE * strength.shearN(), spanM));
      }
    }
  }

  int count() {
    return limits.size();
  }

  Rule rule(int limit) {
    return limits.get(limit).rule();
  }

  /** In the unit of the rule. */
  double most(int limit) {
    return limits.get(limit).most();
  }

  /** Whether a sum above the limit need not mean that the limit is broken. */
  boolean isBound(int limit) {
    return rule(limit) == Rule.JOIST_BENDING;
  }

  /** Length of the span of a bending limit, metres. */
  double spanM(int limit) {
    return limits.get(limit).spanM();
  }

  /** The first limit that a stack breaks by itself. */
  Optional<Rule> brokenBy(Share share, double stackKg) {
    for (int i = 0; i < share.limits.length; i++) {
      if (share.perKg[i] * stackKg > most(share.limits[i]) + 1e-9) {
        return Optional.of(rule(share.limits[i]));
      }
    }
    return Optional.empty();
  }

  /** What a stack adds per kilogram to which limits, growing. */
  static final class Share {
    static final Share NONE = new Share(new TreeMap<>(), Map.of());

    final int[] limits;
    final double[] perKg;
    private final Map<Integer, JoistLoad[]> loads;

    private Share(SortedMap<Integer, Double> perKg, Map<Integer, JoistLoad[]> loads) {
      this.limits = perKg.keySet().stream().mapToInt(Integer::intValue).toArray();
      this.perKg = perKg.values().stream().mapToDouble(Double::doubleValue).toArray();
      this.loads = loads;
    }

    /** Bending moment at a place of a span for each kilogram of the stack, N m. */
    double momentNmPerKg(int limit, double spanM, double placeM) {
      double sum = 0;
      for (JoistLoad load : loads.getOrDefault(limit, NOTHING)) {
        sum += GRAVITY * load.momentAt(spanM, placeM);
      }
      return sum;
    }

    /** Adds what a stack loads the span of a bending limit with. */
    void bend(int limit, double stackKg, SpanBending span) {
      for (JoistLoad load : loads.getOrDefault(limit, NOTHING)) {
        span.add(load, GRAVITY * stackKg);
      }
    }
  }

  /** What a stack on a spot adds per kilogram when this bundle is its lowest. */
  Share share(Spot spot, Bundle lowest) {
    Zone zone = task.site().zone(spot.zoneId()).orElseThrow();
    boolean bears = grids.containsKey(zone.id()) && spot.kind() == SpotKind.STACK;
    BearerRow row = bears ? footings.underStack(footings.of(zone), lowest, 0) : BearerRow.NONE;
    return share(spot, lowest, row);
  }

  /** The same on other bearers; on a deck without joists, on a yard and in a rack none count. */
  Share share(Spot spot, Bundle lowest, BearerRow row) {
    TreeMap<Integer, Double> perKg = new TreeMap<>();
    Map<Integer, List<JoistLoad>> bending = new HashMap<>();
    Integer total = totals.get(spot.zoneId());
    if (total != null) {
      perKg.put(total, 1.0);
    }
    JoistGrid grid = grids.get(spot.zoneId());
    if (grid != null) {
      int first = firstOfDeck.getOrDefault(spot.zoneId(), 0);
      for (JoistLoad load : grid.loads(lines(spot, lowest, row))) {
        int limit = first + 3 * (load.joist() * grid.spans() + load.span());
        double spanM = grid.spanM(load.span());
        bending.computeIfAbsent(limit, l -> new ArrayList<>()).add(load);
        perKg.merge(limit + 1, GRAVITY * load.reactionLeft(spanM), Double::sum);
        perKg.merge(limit + 2, GRAVITY * load.reactionRight(spanM), Double::sum);
      }
    }
    if (perKg.isEmpty()) {
      return Share.NONE;
    }
    Map<Integer, JoistLoad[]> loads = new HashMap<>();
    bending.forEach((limit, some) -> loads.put(limit, some.toArray(JoistLoad[]::new)));
    bending.forEach((limit, some) -> perKg.put(limit, ownMomentNm(limit, some)));
    return new Share(perKg, loads);
  }

  /** The highest moment of a stack of one kilogram. */
  private double ownMomentNm(int limit, List<JoistLoad> loads) {
    SpanBending span = new SpanBending();
    loads.forEach(load -> span.add(load, GRAVITY));
    return span.mostNm(spanM(limit));
  }

  private static List<LineLoad> lines(Spot spot, Bundle lowest, BearerRow row) {
    if (spot.kind() == SpotKind.RACK) {
      return BearerLines.rails(spot.footprint());
    }
    Footprint bundle =
        new Footprint(
            spot.footprint().centre(),
            spot.footprint().headingDeg(),
            lowest.lengthM(),
            lowest.widthM());
    return BearerLines.under(row, bundle, row.lengthM());
  }
}
