package skidway.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.plan.Margin;
import skidway.rules.Rule;

/**
 * Picks, for each stack, what can crush or topple: the loads and heights that it comes nearest to.
 * Distances are on the map.
 */
final class StackMargins {
  /** Enough to see what binds a stack, few enough to read. */
  static final int SHOWN = 3;

  private static final Set<Rule> LOADS_AND_HEIGHTS =
      EnumSet.of(
          Rule.STACK_HEIGHT,
          Rule.STACK_SLENDER,
          Rule.SPOT_MASS,
          Rule.ZONE_LOAD,
          Rule.JOIST_BENDING,
          Rule.JOIST_SHEAR,
          Rule.GROUND_PRESSURE,
          Rule.MACHINE_CAPACITY,
          Rule.SLING_LOAD);

  private StackMargins() {}

  /** The tightest few of each stack, tightest first; stacks in the order in which they come. */
  static List<Margin> tightest(List<Margin> margins) {
    Map<String, List<Margin>> byStack = new LinkedHashMap<>();
    margins.stream()
        .filter(margin -> LOADS_AND_HEIGHTS.contains(margin.rule()))
        .forEach(m -> byStack.computeIfAbsent(m.where(), w -> new ArrayList<>()).add(m));
    return byStack.values().stream()
        .flatMap(
            all ->
                all.stream()
                    .sorted(Comparator.comparingDouble(Margin::share).thenComparing(Margin::rule))
                    .limit(SHOWN))
        .toList();
  }
}
