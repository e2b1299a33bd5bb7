package skidway.sheet;

import skidway.plan.Step;

/** Says in one sentence what is done with a bundle. */
final class StepWords {
  private StepWords() {}

  static String of(Step step, boolean rack) {
    return switch (step.kind()) {
      case SET_ASIDE -> "Take off " + step.fromId() + ", set aside at " + step.toId() + " for now.";
      case MOVE ->
          "Move from "
              + step.fromId()
              + (rack ? ", stand on end in " + step.toId() + "." : ". Put " + put(step));
      case SET_DOWN -> "Set down for now at " + step.toId() + ".";
      case LIFT_ON ->
          rack
              ? "Take from " + step.fromId() + ", stand on end in " + step.toId() + "."
              : "Lift from " + step.fromId() + " onto " + onto(step);
      case PLACE -> rack ? "Open, stand pieces on end in " + step.toId() + "." : "Put " + put(step);
    };
  }

  private static String put(Step step) {
    return step.tier() == 1 ? "down at " + step.toId() + " as tier 1." : "on " + onto(step);
  }

  private static String onto(Step step) {
    return step.toId() + " as tier " + step.tier() + ".";
  }
}
