package skidway.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import skidway.audit.AuditReport;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Deck;
import skidway.site.Spot;
import skidway.site.Zone;

/**
 * What is planned to lie on one deck or yard, beside what may lie there.
 *
 * @param stacks how many stand there
 * @param waits whether bundles wait there for a while
 * @param massKg of all that ever lies there, at most: stacks and bundles that wait
 * @param load the stack or waiting bundle that presses hardest for what is allowed, as the audit
 *     finds it
 * @param whileWaiting whether that is a waiting bundle
 * @param bending the joist that is bent most, if joists were checked
 * @param shear the joist with most shear, if joists were checked
 */
record Placard(
    Zone zone,
    int stacks,
    boolean waits,
    double massKg,
    Optional<Margin> load,
    boolean whileWaiting,
    Optional<Margin> bending,
    Optional<Margin> shear) {

  /** One for each zone, decks first. */
  static List<Placard> of(Task task, Plan plan, AuditReport audit) {
    List<Margin> margins =
        Stream.concat(audit.stackMargins().stream(), audit.margins().stream()).toList();
    Zones zones = Zones.of(task, plan);
    return task.site().zones().stream()
        .map(zone -> of(zone, task, plan, zones.about(zone.id(), margins)))
        .toList();
  }

  private static Placard of(Zone zone, Task task, Plan plan, List<Margin> margins) {
    List<Stack> here =
        plan.stacks().stream().filter(s -> s.spot().zoneId().equals(zone.id())).toList();
    List<String> waiting = waiting(zone, plan);
    double massKg =
        Stream.concat(here.stream().flatMap(s -> s.bundleIds().stream()), waiting.stream())
            .distinct()
            .mapToDouble(id -> Tier.of(task, id).massKg())
            .sum();
    Optional<Margin> load = tightest(margins, loadRule(zone));
    return new Placard(
        zone,
        here.size(),
        !waiting.isEmpty(),
        massKg,
        load,
        load.filter(margin -> isWaitingPlace(margin.where(), plan)).isPresent(),
        tightest(margins, Rule.JOIST_BENDING),
        tightest(margins, Rule.JOIST_SHEAR));
  }

  private static boolean isWaitingPlace(String id, Plan plan) {
    return plan.waitingPlaces().stream().anyMatch(spot -> spot.id().equals(id));
  }

  /** The bundles that some step sets down on a zone to wait. */
  private static List<String> waiting(Zone zone, Plan plan) {
    Set<String> places =
        plan.waitingPlaces().stream()
            .filter(spot -> spot.zoneId().equals(zone.id()))
            .map(Spot::id)
            .collect(Collectors.toSet());
    return plan.steps().stream()
        .filter(step -> step.kind().waits() && places.contains(step.toId()))
        .map(Step::bundleId)
        .toList();
  }

  /** The rule that holds what stands on a zone to what its surface may bear. */
  static Rule loadRule(Zone zone) {
    return zone instanceof Deck ? Rule.ZONE_LOAD : Rule.GROUND_PRESSURE;
  }

  private static Optional<Margin> tightest(List<Margin> margins, Rule rule) {
    return margins.stream()
        .filter(margin -> margin.rule() == rule)
        .min(Comparator.comparingDouble(Margin::share));
  }
}
