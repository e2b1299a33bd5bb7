package skidway.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import skidway.plan.Plan;
import skidway.plan.Stack;
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
    return heightM(tiers.size(), settings);
  }

  /** Height of the lowest tiers with the bearers under each, metres; of a rack nothing. */
  double heightM(int lowest, Settings settings) {
    double bearerM = settings.get(Setting.BEARER_HEIGHT);
    return rack()
        ? 0
        : tiers.stream().limit(Math.max(0, lowest)).mapToDouble(t -> t.heightM() + bearerM).sum();
  }
}
