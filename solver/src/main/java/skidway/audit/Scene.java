package skidway.audit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Spot;
import skidway.timber.Bundle;

/** The plan laid beside the job: its stacks with the bundles and zones that really exist. */
final class Scene {
  private final Task task;
  private final Plan plan;
  private final List<Standing> standings;

  Scene(Task task, Plan plan) {
    this.task = task;
    this.plan = plan;
    standings = plan.stacks().stream().map(this::standing).toList();
  }

  private Standing standing(Stack stack) {
    List<Bundle> bundles =
        stack.bundleIds().stream().map(task.delivery()::bundle).flatMap(Optional::stream).toList();
    return new Standing(stack.spot(), task.site().zone(stack.spot().zoneId()), bundles);
  }

  Task task() {
    return task;
  }

  Plan plan() {
    return plan;
  }

  double setting(Setting setting) {
    return task.settings().get(setting);
  }

  List<Standing> standings() {
    return standings;
  }

  /** The spots of all stacks, then the waiting places, those whose numbers can be drawn. */
  List<Spot> soundSpots() {
    return Stream.concat(plan.stacks().stream().map(Stack::spot), plan.waitingPlaces().stream())
        .filter(Soundness::sound)
        .toList();
  }

  /** The spots of all stacks whose numbers can be drawn. */
  List<Spot> soundStackSpots() {
    return plan.stacks().stream().map(Stack::spot).filter(Soundness::sound).toList();
  }
}
