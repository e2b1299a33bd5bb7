package skidway.sheet;

import skidway.plan.Step;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.rules.Settings;

/** Tells from which step on a stack needs cross supports or wedges. */
final class RisesHigh {
  private RisesHigh() {}

  /** Whether it does from this step on, and not before. */
  static boolean from(Step step, StackView stack, Settings settings) {
    double limitM = settings.get(Setting.WEDGE_HEIGHT) + 1e-9;
    return !step.kind().waits()
        && stack.heightM(step, settings) > limitM
        && stack.heightBeneathM(step, settings) <= limitM;
  }

  static String words(Task task) {
    String height = task.figures().length(task.settings().get(Setting.WEDGE_HEIGHT));
    return "Above " + height + ": cross supports or wedges first.";
  }
}
