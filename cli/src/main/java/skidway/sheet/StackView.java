package skidway.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.site.SpotKind;

/**
 * A stack with its bundles looked up, ready to be shown.
 *
 * @param tiers bottom to top
 */
record StackView(Spot spot, List<Tier> tiers) {
  StackView {
    tiers = List.copyOf(tiers);
  }

  static List<StackView> of(Task task, Plan plan) {
    return plan.stacks().stream().map(stack -> of(task, stack)).toList();
  }

  private static StackView of(Task task, Stack stack) {
    return new StackView(
        stack.spot(), stack.bundleIds().stream().map(id -> Tier.of(task, id)).toList());
  }

  boolean rack() {
    return spot.kind() == SpotKind.RACK;
  }

  List<Tier> fromTheTop() {
    List<Tier> reversed = new ArrayList<>(tiers);
    Collections.reverse(reversed);
    return reversed;
  }

  double massKg() {
    return tiers.stream().mapToDouble(Tier::massKg).sum();
  }

  /** Height of the whole stack with the bearers under each tier, metres; of a rack nothing. */
  double heightM(Settings settings) {
    return heightM(0, tiers.size(), settings);
  }

  /** Of the stacks on a step's spot the one that it brings its bundle to. */
  static Optional<StackView> broughtTo(List<StackView> stacks, Step step) {
    List<StackView> there =
        stacks.stream().filter(stack -> stack.spot().id().equals(step.toId())).toList();
    return there.stream()
        .filter(stack -> stack.place(step.bundleId()) >= 0)
        .findFirst()
        .or(() -> there.stream().findFirst());
  }

  /** The place of a bundle in the list of tiers, or -1. */
  int place(String bundleId) {
    return tiers.stream().map(Tier::bundleId).toList().indexOf(bundleId);
  }

  /** Height when a step has put its bundle on, metres; of a rack nothing. */
  double heightM(Step step, Settings settings) {
    return heightM(lowest(step), step.tier(), settings);
  }

  /** Height of what a step puts its bundle on, metres; of a rack nothing. */
  double heightBeneathM(Step step, Settings settings) {
    return heightM(lowest(step), step.tier() - 1, settings);
  }

  /** How many bundles that lay beneath are gone when the bundle of a step comes. */
  private int lowest(Step step) {
    return Math.max(0, place(step.bundleId()) + 1 - step.tier());
  }

  /** What came first goes first, as a rule: so many are gone, so many lie there. */
  private double heightM(int gone, int count, Settings settings) {
    double bearerM = settings.get(Setting.BEARER_HEIGHT);
    return rack()
        ? 0
        : tiers.stream()
            .skip(gone)
            .limit(Math.max(0, count))
            .mapToDouble(t -> t.heightM() + bearerM)
            .sum();
  }
}
