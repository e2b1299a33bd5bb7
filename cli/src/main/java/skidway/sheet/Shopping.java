package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.units.Figures;

/**
 * What to have on site before the first truck: bearers cut to length, rails for racks, supports for
 * high stacks. Bearers are told apart by their length as it is written.
 *
 * @param section of bearers and rails, as assumed
 * @param bearers longest first
 * @param rails two under each rack, longest first
 * @param wedgeHeight above which a stack needs cross supports or wedges
 * @param braced codes of the stacks that are higher
 */
public record Shopping(
    String section, List<Cut> bearers, List<Cut> rails, String wedgeHeight, List<String> braced) {

  /**
   * Timbers of one length.
   *
   * @param bottom under the lowest bundles of stacks
   * @param between between tiers
   * @param waiting under bundles that wait; free again when these are lifted on
   */
  record Cut(String length, int bottom, int between, int waiting) {
    int together() {
      return bottom + between + waiting;
    }

    private Cut plus(Cut other) {
      return new Cut(
          length, bottom + other.bottom, between + other.between, waiting + other.waiting);
    }
  }

  public Shopping {
    bearers = List.copyOf(bearers);
    rails = List.copyOf(rails);
    braced = List.copyOf(braced);
  }

  public static Shopping of(Task task, Plan plan) {
    Figures figures = task.figures();
    Map<String, Cut> bearers = new LinkedHashMap<>();
    plan.steps().stream()
        .filter(step -> step.bearers().count() > 0)
        .sorted(Comparator.comparingDouble((Step s) -> -s.bearers().lengthM()))
        .map(step -> cut(step, figures))
        .forEach(cut -> bearers.merge(cut.length(), cut, Cut::plus));
    Map<String, Cut> rails = new LinkedHashMap<>();
    List<StackView> stacks = StackView.of(task, plan);
    stacks.stream()
        .filter(StackView::rack)
        .sorted(Comparator.comparingDouble(s -> -s.spot().footprint().lengthM()))
        .map(s -> new Cut(figures.length(s.spot().footprint().lengthM()), 2, 0, 0))
        .forEach(cut -> rails.merge(cut.length(), cut, Cut::plus));
    double wedgeM = task.settings().get(Setting.WEDGE_HEIGHT);
    return new Shopping(
        figures.length(task.settings().get(Setting.BEARER_WIDTH))
            + " wide, "
            + figures.length(task.settings().get(Setting.BEARER_HEIGHT))
            + " high",
        List.copyOf(bearers.values()),
        List.copyOf(rails.values()),
        figures.length(wedgeM),
        stacks.stream()
            .filter(stack -> stack.heightM(task.settings()) > wedgeM + 1e-9)
            .map(stack -> stack.spot().id())
            .toList());
  }

  private static Cut cut(Step step, Figures figures) {
    String length = figures.length(step.bearers().lengthM());
    int count = step.bearers().count();
    if (step.kind().waits()) {
      return new Cut(length, 0, 0, count);
    }
    return step.tier() > 1 ? new Cut(length, 0, count, 0) : new Cut(length, count, 0, 0);
  }

  /** The list in a few lines of text. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        bearers.isEmpty()
            ? "bearers: the plan does not say"
            : "bearers, " + section + " (assumed): " + counts(bearers));
    if (!rails.isEmpty()) {
      lines.add("rack rails, of the same timber, two under each rack: " + counts(rails));
    }
    if (!braced.isEmpty()) {
      lines.add(
          "cross supports or wedges, a set for each stack higher than "
              + wedgeHeight
              + ": "
              + String.join(", ", braced));
    }
    return lines;
  }

  private static String counts(List<Cut> cuts) {
    return cuts.stream()
        .map(cut -> cut.together() + " of " + cut.length())
        .collect(Collectors.joining(", "));
  }
}
