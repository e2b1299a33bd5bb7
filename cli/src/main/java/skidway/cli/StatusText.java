package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import skidway.plan.Plan;
import skidway.progress.EventWords;
import skidway.progress.Progress;

/** Says on the screen how a job stands. */
final class StatusText {
  private StatusText() {}

  static List<String> lines(Standing standing) {
    List<String> lines = new ArrayList<>();
    List<BundleState> bundles = BundleState.all(standing);
    lines.addAll(loads(standing));
    lines.add("");
    lines.addAll(bundles(standing, bundles));
    lines.add("");
    lines.addAll(walls(standing));
    lines.addAll(notToHand(standing.progress()));
    lines.addAll(caution(standing.chosen().plan(), bundles));
    return lines;
  }

  private static List<String> loads(Standing standing) {
    TextTable table = new TextTable("load", "", "when", "planned", ">down", ">missing", ">of");
    for (LoadState load : LoadState.all(standing)) {
      table.row(
          load.load().id(),
          load.state(),
          EventWords.time(load.at()),
          EventWords.time(load.load().arrival()),
          Integer.toString(load.down()),
          Integer.toString(load.missing()),
          Integer.toString(load.bundles()));
    }
    return table.lines();
  }

  private static List<String> bundles(Standing standing, List<BundleState> bundles) {
    TextTable table =
        new TextTable("bundle", "load", "lies", "planned", ">left", ">not to hand", ">of");
    for (BundleState state : bundles) {
      table.row(
          state.bundle().id(),
          state.bundle().loadId(),
          state.words(),
          state.plannedElsewhere(standing.chosen().plan()).orElse(""),
          Integer.toString(state.left()),
          Integer.toString(state.withheld()),
          Integer.toString(state.bundle().packed().size()));
    }
    return table.lines();
  }

  private static List<String> walls(Standing standing) {
    TextTable table = new TextTable("wall", ">whole to course", ">pulled", ">of", "next");
    for (WallState wall : WallState.all(standing)) {
      table.row(
          wall.wallId(),
          wall.course() == 0 ? "-" : Integer.toString(wall.course()),
          Integer.toString(wall.pulled()),
          Integer.toString(wall.pieces()),
          wall.next());
    }
    return table.lines();
  }

  private static List<String> notToHand(Progress progress) {
    List<String> lines = new ArrayList<>();
    if (!progress.missing().isEmpty()) {
      lines.add("");
      lines.addAll(Wrap.sentence("Missing: " + String.join(", ", progress.missing()), 0, 2));
    }
    if (!progress.damaged().isEmpty()) {
      lines.add("");
      lines.addAll(Wrap.sentence("Damaged: " + String.join(", ", progress.damaged()), 0, 2));
    }
    if (!progress.extras().isEmpty()) {
      String extras =
          progress.extras().stream().map(EventWords::of).collect(Collectors.joining("; "));
      lines.add("");
      lines.addAll(Wrap.sentence("On no list when it came: " + extras, 0, 2));
    }
    return lines;
  }

  private static List<String> caution(Plan plan, List<BundleState> bundles) {
    long elsewhere = bundles.stream().filter(b -> b.plannedElsewhere(plan).isPresent()).count();
    if (elsewhere == 0) {
      return List.of();
    }
    List<String> lines = new ArrayList<>(List.of(""));
    lines.addAll(
        Wrap.sentence(
            "Caution: "
                + (elsewhere == 1 ? "1 bundle lies" : elsewhere + " bundles lie")
                + " elsewhere than plan "
                + plan.revision()
                + " has it. What floor, ground and stacks bear was checked for the plan only.",
            0,
            2));
    return lines;
  }
}
