package skidway.sheet;

import java.util.ArrayList;
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
  private final RunningHead head;
  private final Map<String, PullLine> lines = new HashMap<>();

  private PileSigns(Markup page, Task task, List<PullLine> pulls, RunningHead head) {
    this.page = page;
    this.task = task;
    this.head = head;
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
        .flatMap(pile -> ends(pile).stream())
        .map(sheet -> sheet.to - sheet.from)
        .toList();
  }

  /** Layers of one sheet, counted from below: from one up to before another. */
  private record Ends(int from, int to) {}

  /** The sheets of a pile from the top down, none fuller than another by more than one. */
  private static List<Ends> ends(TimberPile pile) {
    int layers = pile.layers().size();
    int sheets = (layers + SignSheet.MOST_TIERS - 1) / SignSheet.MOST_TIERS;
    List<Ends> all = new ArrayList<>();
    for (int i = sheets - 1; i >= 0; i--) {
      all.add(new Ends(layers * i / sheets, layers * (i + 1) / sheets));
    }
    return all;
  }

  private void sheets(Wave wave, TimberPile pile) {
    List<Ends> all = ends(pile);
    for (Ends sheet : all) {
      int count = sheet.to - sheet.from;
      page.open("article", "class", "stack-sign tiers-" + count);
      String size = "font-size:" + Numbers.of(SignSizes.codeMm(pile.id(), count)) + "mm";
      page.leaf("h3", pile.id(), "style", size);
      totals(wave, pile);
      page.leaf("p", WaveSheet.when(wave), "class", "order");
      if (all.size() > 1) {
        String which = "Sheet " + (all.indexOf(sheet) + 1) + " of " + all.size();
        page.leaf("p", which + ". Put all " + all.size() + " up together.", "class", "order");
      }
      page.open("ol", "class", "piled");
      for (int layer = sheet.to - 1; layer >= sheet.from; layer--) {
        layer(pile, layer);
      }
      page.close();
      foot(pile);
    }
  }

  private void totals(Wave wave, TimberPile pile) {
    page.open("div", "class", "totals");
    total("wave", Integer.toString(wave.number()));
    total("whole pile, at most", task.figures().mass(pile.massKg()));
    total("high", task.figures().length(pile.heightM()));
    total("take from the", Compass.name(pile.spot().towardsOpenSide(), task.site().northDeg()));
    page.close();
  }

  private void total(String what, String value) {
    page.open("p").leaf("strong", value).text(" ").leaf("span", what).close();
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
    page.leaf(
        "p",
        "Weights are the most to expect. The floor's designer, whoever answers for the ground, and"
            + " local codes go before this sign.");
    page.leaf("p", head.words(), "class", "of").close().line();
  }
}
