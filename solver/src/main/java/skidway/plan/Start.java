package skidway.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import skidway.site.Spot;
import skidway.timber.BearerRow;

/**
 * What is there already when a plan begins: nothing at first, later what the crew put down.
 *
 * @param stacks what lies where, bottom to top
 * @param bearers under the lowest bundle of a stack, by that bundle, where they are known
 * @param marked the spots that earlier revisions had marked on the ground; their codes are taken
 * @param fixed bundles that must stay where they lie: their bands are cut, or somebody locked them
 * @param intended the spot where the revision before meant each bundle to go that is not down yet
 * @param held marks of pieces that wait for one that is not there; all others are pulled before
 */
public record Start(
    List<Stack> stacks,
    Map<String, BearerRow> bearers,
    List<Spot> marked,
    Set<String> fixed,
    Map<String, String> intended,
    Set<String> held) {
  public static final Start EMPTY_SITE =
      new Start(List.of(), Map.of(), List.of(), Set.of(), Map.of(), Set.of());

  /** A start without a revision before that meant bundles to go anywhere. */
  public Start(
      List<Stack> stacks,
      Map<String, BearerRow> bearers,
      List<Spot> marked,
      Set<String> fixed,
      Set<String> held) {
    this(stacks, bearers, marked, fixed, Map.of(), held);
  }

  public Start {
    stacks = List.copyOf(stacks);
    bearers = Map.copyOf(bearers);
    marked = List.copyOf(marked);
    fixed = Set.copyOf(fixed);
    intended = Map.copyOf(intended);
    held = Set.copyOf(held);
  }

  /** Where a bundle lies when the plan begins. */
  public Optional<Stack> stackOf(String bundleId) {
    return stacks.stream().filter(stack -> stack.bundleIds().contains(bundleId)).findFirst();
  }

  /** Whether the bundle is down already. */
  public boolean lies(String bundleId) {
    return stackOf(bundleId).isPresent();
  }
}
