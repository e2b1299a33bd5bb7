package skidway.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.timber.Piece;

/**
 * Writes a sign for each pile of the waves, on printed pages of its own, to be put up where the
 * pile comes to lie before anything is brought: its code, its wave, and what lies in which layer,
 * as a stack's sign does.
 */
final class PileSigns {
  private final Markup page;
  private final Task task;
  private final SignFrame frame;
  private final Map<String, PullLine> lines = new HashMap<>();

  private PileSigns(Markup page, Task task, List<PullLine> pulls, RunningHead head) {
    this.page = page;
    this.task = task;
    this.frame = new SignFrame(page, head);
    pulls.forEach(line -> lines.put(line.piece().mark(), line));
  }

  /**
   * @param pulls all pieces in the order in which they are pulled
   */
  static void write(
      Markup page, Task task, WavePlan waves, List<PullLine> pulls, RunningHead head) {
    if (waves.waves().isEmpty()) {
      return;
    }
    page.open("section", "id", "pile-signs").leaf("h2", "Pile signs").line();
    PileSigns signs = new PileSigns(page, task, pulls, head);
    for (Wave wave : waves.waves()) {
      for (TimberPile pile : wave.piles()) {
        signs.sheets(wave, pile);
      }
    }
    page.close().line();
  }

  /** How many layers the signs' sheets hold, for the size of their letters. */
  static List<Integer> layerCounts(WavePlan waves) {
    return waves.waves().stream()
        .flatMap(wave -> wave.piles().stream())
        .flatMap(pile -> fromTheTop(pile).stream())
        .map(SignSheet.Span::count)
        .toList();
  }

  /** The sheets of a pile from the top down, each with its layers counted from below. */
  private static List<SignSheet.Span> fromTheTop(TimberPile pile) {
    List<SignSheet.Span> sheets = new ArrayList<>(SignSheet.spans(pile.layers().size()));
    Collections.reverse(sheets);
    return sheets;
  }

  private void sheets(Wave wave, TimberPile pile) {
    List<SignSheet.Span> all = fromTheTop(pile);
    for (SignSheet.Span sheet : all) {
      frame.open(pile.id(), sheet.count());
      totals(wave, pile);
      page.leaf("p", WaveSheet.when(wave), "class", "order");
      if (all.size() > 1) {
        String which = SignSheet.words(all.indexOf(sheet) + 1, all.size(), "");
        page.leaf("p", which, "class", "order");
      }
      page.open("ol", "class", "piled");
      for (int layer = sheet.to() - 1; layer >= sheet.from(); layer--) {
        layer(pile, layer);
      }
      page.close();
      foot(pile);
    }
  }

  private void totals(Wave wave, TimberPile pile) {
    page.open("div", "class", "totals");
    frame.total("wave", Integer.toString(wave.number()));
    frame.total("whole pile, at most", task.figures().mass(pile.massKg()));
    frame.total("high", task.figures().length(pile.heightM()));
    frame.total(
        "take from the", Compass.name(pile.spot().towardsOpenSide(), task.site().northDeg()));
    page.close();
  }

  /** Its pieces in the order in which they are taken. */
  private void layer(TimberPile pile, int layer) {
    List<PullLine> own =
        pile.layers().get(layer).stream()
            .flatMap(mark -> Optional.ofNullable(lines.get(mark)).stream())
            .sorted(Comparator.comparingInt(PullLine::turn))
            .toList();
    boolean top = layer + 1 == pile.layers().size();
    page.open("li").leaf("span", "layer " + (layer + 1), "class", "level");
    String marks = own.stream().map(l -> l.piece().mark()).collect(Collectors.joining(", "));
    page.open("div").leaf("b", marks, "class", "id");
    List<Piece> pieces = own.stream().map(PullLine::piece).toList();
    page.leaf("p", (top ? "Take first. " : "") + InsideWords.of(pieces), "class", "inside");
    page.close().close().line();
  }

  private void foot(TimberPile pile) {
    page.open("p", "class", "under").leaf("b", "Bearers under it: ");
    page.text(pile.bearers().count() + " of " + task.figures().length(pile.bearers().lengthM()));
    page.close();
    page.leaf(
        "p",
        "Lay layer 1 first, on bearers, with stickers between layers. Take from the top. Heap no"
            + " more on it than is listed; nothing leans on a wall.",
        "class",
        "order");
    frame.close();
  }
}
