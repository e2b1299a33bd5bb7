package skidway.sheet;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.timber.Piece;

/**
 * Writes a sign for each stack, on printed pages of its own, to be put up at the stack and read
 * from several metres: its code, what lies in it from the top, and what to take first.
 */
final class StackSigns {
  private static final int FIRST_PIECES = 3;

  private final Markup page;
  private final Task task;
  private final Plan plan;
  private final SignFrame frame;
  private final Map<String, List<PullLine>> pulls;

  private StackSigns(Markup page, Task task, Plan plan, RunningHead head) {
    this.page = page;
    this.frame = new SignFrame(page, head);
    this.task = task;
    this.plan = plan;
    this.pulls =
        PullList.of(task, plan).stream().collect(Collectors.groupingBy(l -> l.bundle().id()));
  }

  /**
   * @param margins what an audit found for each stack
   */
  static void write(Markup page, Task task, Plan plan, List<Margin> margins, RunningHead head) {
    page.open("section", "id", "signs").leaf("h2", "Stack signs").line();
    StackSigns signs = new StackSigns(page, task, plan, head);
    StackView.of(task, plan).stream()
        .flatMap(stack -> SignSheet.of(stack).stream())
        .forEach(sheet -> signs.sign(sheet, margins));
    page.close().line();
  }

  private void sign(SignSheet sheet, List<Margin> margins) {
    StackView stack = sheet.stack();
    frame.open(stack.spot().id(), sheet.tiers().size());
    page.open("div", "class", "totals");
    frame.total(
        stack.rack() ? "whole rack, at most" : "whole stack, at most", mass(stack.massKg()));
    String side = Compass.name(stack.spot().towardsOpenSide(), task.site().northDeg());
    frame.total("take from the", side);
    LoadBelow load = LoadBelow.of(task, stack, margins);
    String much = load.tooMuch() ? "! too much: " : "";
    frame.total("load below / allowed", much + load.planned() + " / " + load.allowed());
    page.close();
    if (sheet.sheets() > 1) {
      page.leaf("p", sheet.words(), "class", "order");
    }
    page.open("ol", "class", stack.rack() ? "on-end" : "piled");
    for (int i = 0; i < sheet.tiers().size(); i++) {
      tier(sheet.tiers().get(i), sheet.level(i));
    }
    page.close();
    page.open("p", "class", "under").leaf("b", "Bearers under it: ").text(bearers(stack)).close();
    page.leaf("p", caution(stack), "class", "order");
    frame.close();
  }

  private void tier(Tier tier, String level) {
    page.open("li").leaf("span", level, "class", "level");
    page.open("div").leaf("b", tier.bundleId(), "class", "id").text(" ");
    page.leaf("span", tier.bundle().isEmpty() ? "not known" : mass(tier.massKg()), "class", "mass");
    tier.bundle()
        .ifPresent(b -> page.leaf("p", InsideWords.of(inOrder(b.id())), "class", "inside"));
    List<PullLine> first = pulls.getOrDefault(tier.bundleId(), List.of());
    if (!first.isEmpty()) {
      page.open("p", "class", "first").text("Take first: ");
      page.leaf(
          "b",
          first.stream()
              .limit(FIRST_PIECES)
              .map(line -> line.piece().mark())
              .collect(Collectors.joining(", ")));
      page.close();
    }
    page.close().close().line();
  }

  private List<Piece> inOrder(String bundleId) {
    return pulls.getOrDefault(bundleId, List.of()).stream().map(PullLine::piece).toList();
  }

  private String bearers(StackView stack) {
    return plan.steps().stream()
        .filter(s -> !s.kind().waits() && s.toId().equals(stack.spot().id()))
        .filter(s -> s.tier() <= 1)
        .findFirst()
        .map(s -> String.join(", ", StepRow.bearers(s.bearers(), stack.rack(), task.figures())))
        .orElse("as the site lead says");
  }

  /** What people laid by hand has no bands any more. */
  private String caution(StackView stack) {
    String bands =
        task.site().byHand()
            ? "Timbers are loose, without bands: wedge what could roll."
            : "Bands are under tension: cut them standing to the side.";
    String taking =
        stack.rack()
            ? " Tie what stays before taking one out."
            : " Take nothing from below: what lies over it comes off first.";
    return bands + taking;
  }

  private String mass(double kg) {
    return task.figures().mass(kg);
  }
}
