package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.site.Spot;

/**
 * Draws the site to scale with its stacks: where each stands, what is in it from top to bottom, and
 * from which side people take from it. A bundle's place is told beside its stack where there is
 * room, else in the panel beside the map.
 */
public final class StackMap {
  private StackMap() {}

  /**
   * The map of a plan.
   *
   * @param fingerprint of the plan; its beginning is printed on the map
   */
  public static String svg(Task task, Plan plan, String fingerprint, Paper paper) {
    List<StackView> stacks = StackView.of(task, plan);
    List<Spot> waiting = plan.waitingPlaces();
    String right = "Revision " + plan.revision();
    String under = "Stack map · plan " + Fingerprints.brief(fingerprint) + warning(plan);
    List<Reference> corners = SetOut.of(task, plan).references();
    return draw(task, paper, stacks, waiting, corners, right, under);
  }

  /** The site without a plan, with the spots given by the people there. */
  public static String siteOnly(Task task, Paper paper) {
    List<StackView> stacks =
        task.site().spots().stream().map(s -> new StackView(s, List.of())).toList();
    return draw(task, paper, stacks, List.of(), List.of(), "Site", "Site before any plan");
  }

  private static String draw(
      Task task,
      Paper paper,
      List<StackView> stacks,
      List<Spot> waiting,
      List<Reference> corners,
      String right,
      String under) {
    List<Spot> spots = new ArrayList<>(stacks.stream().map(StackView::spot).toList());
    spots.addAll(waiting);
    Extent extent = Extent.of(task.site(), spots);
    Set<String> inPanel = new TreeSet<>();
    while (true) {
      MapLayout layout =
          MapLayout.choose(
              paper, extent, panel(task, stacks, !waiting.isEmpty(), !corners.isEmpty(), inPanel));
      Scene scene = new Scene(task, layout.frame(), stacks, waiting, corners, inPanel);
      if (inPanel.addAll(scene.withoutCard())) {
        continue;
      }
      Scale scale = layout.frame().scale();
      Drawing drawing = new Drawing(paper, task.jobName() + ", " + right);
      drawing.rect(Box.at(0, 0, paper.widthMm(), paper.heightMm()), "fill", Palette.PAPER);
      String full =
          String.format(
              Locale.ROOT,
              "%s · %s at full size · the machine's own chart and the floor's designer govern",
              under,
              scale);
      new TitleBlock(task.jobName(), right, full).draw(drawing, paper);
      scene.draw(drawing);
      layout.panel().draw(drawing, layout.panelBox());
      return drawing.done();
    }
  }

  private static Function<Scale, Panel> panel(
      Task task, List<StackView> stacks, boolean waiting, boolean corners, Set<String> inPanel) {
    Set<String> told = Set.copyOf(inPanel);
    return scale -> {
      List<PanelItem> items = new ArrayList<>();
      items.add(new ScaleBar(scale, task.figures().units(), task.site().northDeg()));
      items.addAll(Legend.of(task, stacks, waiting));
      if (corners) {
        items.add(LegendEntry.of("corner to tape from, see set-out", LegendSigns::tapeCorner));
      }
      for (StackView stack : stacks) {
        if (told.contains(stack.spot().id())) {
          items.add(new TierLines(stack, task.figures()));
        }
      }
      return new Panel(items);
    };
  }

  private static String warning(Plan plan) {
    int without = plan.unplaced().size();
    return without == 0 ? "" : " · " + without + " without a spot, see the sheet";
  }
}
