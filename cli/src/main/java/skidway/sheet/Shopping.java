package skidway.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Footprint;
import skidway.timber.Bundle;
import skidway.units.Figures;

/**
 * What to have on site before the first truck: bearers cut to length, rails for racks, supports for
 * high stacks, covers. Bearers are told apart by their length as it is written.
 *
 * @param section of bearers and rails, as assumed
 * @param bearers longest first
 * @param rails two under each rack, longest first
 * @param racks codes of the racks
 * @param covers one over each stack, by what is written of their size
 * @param damp bundles with timbers that still dry
 * @param wedgeHeight above which a stack needs cross supports or wedges
 * @param braced codes of the stacks that are higher
 */
public record Shopping(
    String section,
    List<Cut> bearers,
    List<Cut> rails,
    List<String> racks,
    Map<String, List<String>> covers,
    List<String> damp,
    String wedgeHeight,
    List<String> braced) {
  /**
   * Above this, timber is piled on stickers so that it dries (percent; TM 38-400, Joint Storage
   * Manual, ch. 5).
   */
  private static final double SEASONED_PCT = 19;

  /** Two that its pieces stand on, two that they lean against. */
  static final int RAILS_OF_A_RACK = 4;

  /** Of each rack: one at each end of both rails that its pieces lean against. */
  static final int TIES_OF_A_RACK = 4;

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
    racks = List.copyOf(racks);
    covers = Collections.unmodifiableMap(new LinkedHashMap<>(covers));
    damp = List.copyOf(damp);
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
        .map(s -> new Cut(figures.length(s.spot().footprint().lengthM()), RAILS_OF_A_RACK, 0, 0))
        .forEach(cut -> rails.merge(cut.length(), cut, Cut::plus));
    double wedgeM = task.settings().get(Setting.WEDGE_HEIGHT);
    return new Shopping(
        figures.length(task.settings().get(Setting.BEARER_WIDTH))
            + " wide, "
            + figures.length(task.settings().get(Setting.BEARER_HEIGHT))
            + " high",
        List.copyOf(bearers.values()),
        List.copyOf(rails.values()),
        stacks.stream().filter(StackView::rack).map(stack -> stack.spot().id()).toList(),
        covers(task, stacks),
        damp(task),
        figures.length(wedgeM),
        stacks.stream()
            .filter(stack -> stack.heightM(task.settings()) > wedgeM + 1e-9)
            .map(stack -> stack.spot().id())
            .toList());
  }

  /** Over the top of each stack and a little beyond it, so that air gets to its sides. */
  private static Map<String, List<String>> covers(Task task, List<StackView> stacks) {
    double endsM = task.settings().get(Setting.COVER_ENDS);
    double sidesM = task.settings().get(Setting.COVER_SIDES);
    Map<String, List<String>> covers = new LinkedHashMap<>();
    stacks.stream()
        .filter(stack -> !stack.rack())
        .sorted(Comparator.comparingDouble(s -> -s.spot().footprint().areaM2()))
        .forEach(
            stack -> {
              Footprint area = stack.spot().footprint();
              String size =
                  task.figures().length(area.lengthM() + 2 * endsM)
                      + " by "
                      + task.figures().length(area.widthM() + 2 * sidesM);
              covers.computeIfAbsent(size, s -> new ArrayList<>()).add(stack.spot().id());
            });
    return covers;
  }

  private static List<String> damp(Task task) {
    return task.delivery().bundles().stream()
        .filter(b -> b.pieces().stream().anyMatch(p -> p.moisture().highPct() > SEASONED_PCT))
        .map(Bundle::id)
        .toList();
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
      lines.add(
          "rack rails, of the same timber, two under each rack and two to lean against: "
              + counts(rails));
    }
    lines.addAll(others());
    if (!braced.isEmpty()) {
      lines.add(
          "cross supports or wedges, a set for each stack higher than "
              + wedgeHeight
              + ": "
              + String.join(", ", braced));
    }
    return lines;
  }

  /** What is not cut from bearer timber. */
  List<String> others() {
    List<String> others = new ArrayList<>();
    if (!racks.isEmpty()) {
      others.add(
          "ties, one at each end of both rails that racked pieces lean against: "
              + TIES_OF_A_RACK * racks.size()
              + " for "
              + IdRanges.words(racks));
    }
    if (!covers.isEmpty()) {
      others.add("covers, one over each stack, its sides left open to the air: " + coverCounts());
    }
    if (!damp.isEmpty()) {
      others.add(
          "stickers, wherever timbers that still dry are piled anew, as long as the pile is wide,"
              + " over its bearers: "
              + IdRanges.words(damp));
    }
    return others;
  }

  private String coverCounts() {
    return covers.entrySet().stream()
        .map(
            cover ->
                cover.getValue().size()
                    + " of "
                    + cover.getKey()
                    + " ("
                    + IdRanges.words(cover.getValue())
                    + ")")
        .collect(Collectors.joining(", "));
  }

  private static String counts(List<Cut> cuts) {
    return cuts.stream()
        .map(cut -> cut.together() + " of " + cut.length())
        .collect(Collectors.joining(", "));
  }
}
