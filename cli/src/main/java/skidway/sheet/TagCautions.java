package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.units.Figures;

/** Says what to heed when a bundle is lifted, and nothing where there is nothing to heed. */
final class TagCautions {
  /** From this share of the chart on, a bundle is called heavy (assumption). */
  private static final double HEAVY = 0.8;

  private final Task task;
  private final Plan plan;
  private final List<StackView> stacks;

  TagCautions(Task task, Plan plan) {
    this.task = task;
    this.plan = plan;
    this.stacks = StackView.of(task, plan);
  }

  List<String> of(String bundleId) {
    List<Step> steps = plan.steps().stream().filter(s -> s.bundleId().equals(bundleId)).toList();
    List<String> all = new ArrayList<>();
    for (Step step : steps) {
      if (step.kind() == StepKind.SET_DOWN) {
        all.add("Set down first at " + step.toId() + "; goes on later.");
      } else if (step.kind() == StepKind.SET_ASIDE) {
        all.add("Set aside first at " + step.toId() + "; goes on later.");
      } else if (topM(step) > task.settings().get(Setting.WEDGE_HEIGHT) + 1e-9) {
        String height = task.figures().length(task.settings().get(Setting.WEDGE_HEIGHT));
        all.add("Top above " + height + ": cross supports or wedges first.");
      }
    }
    if (task.site().byHand()) {
      devices(bundleId).ifPresent(all::add);
      return all;
    }
    double share = steps.stream().mapToDouble(TagCautions::share).max().orElse(0);
    if (share > 1 + 1e-9) {
      all.add("Heavier than the machine's chart allows. Do not lift.");
    } else if (share > HEAVY) {
      // Rounded up: what is nearly all must not read as less.
      long percent = (long) Math.ceil(share * 100 - 1e-9);
      all.add(String.format(Locale.ROOT, "Heavy: takes %d %% of the machine's chart.", percent));
    }
    return all;
  }

  private Optional<String> devices(String bundleId) {
    Team team = new Team(task.settings());
    long heavy =
        task.delivery().bundle(bundleId).stream()
            .flatMap(bundle -> bundle.pieces().stream())
            .filter(team::needsDevice)
            .count();
    return heavy == 0
        ? Optional.empty()
        : Optional.of(Figures.counted(heavy, "piece") + " too heavy for people: lifting device.");
  }

  private double topM(Step step) {
    return StackView.broughtTo(stacks, step)
        .map(stack -> stack.heightM(step, task.settings()))
        .orElse(0.0);
  }

  private static double share(Step step) {
    return step.capacityKg() > 0 ? step.massKg() / step.capacityKg() : Double.POSITIVE_INFINITY;
  }
}
