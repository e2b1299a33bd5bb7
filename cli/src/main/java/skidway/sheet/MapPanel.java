package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import skidway.plan.Task;

/** What stands beside a map: scale and north, its stacks from the side, its signs explained. */
record MapPanel(PanelItem scaleBar, List<PanelItem> cards, List<PanelItem> legend) {
  private static final String UNTOLD = "no room on this map for: ";

  /** Heights are tried in steps of this, mm. */
  private static final double STEP = 2;

  /**
   * @param view as far as it shows
   * @param untold codes and names that found no room on the map
   */
  static MapPanel of(MapView view, Scale scale, Set<String> untold) {
    Task task = view.task();
    List<PanelItem> cards = new ArrayList<>();
    if (view.zone().isPresent()) {
      view.stacks().forEach(stack -> cards.addAll(StackCard.of(stack, task.figures())));
    }
    List<PanelItem> legend = new ArrayList<>(Legend.of(view));
    if (!untold.isEmpty()) {
      legend.add(LegendEntry.of(UNTOLD + String.join(", ", untold), (drawing, box) -> {}));
    }
    PanelItem bar = new ScaleBar(scale, task.figures().units(), task.site().northDeg());
    return new MapPanel(bar, cards, legend);
  }

  /** With no more cards than fit into so many columns of this height, in their order. */
  Panel fitting(int columns, double heightMm) {
    int kept = cards.size();
    while (kept > 0 && with(kept).columns(heightMm) > columns) {
      kept--;
    }
    return with(kept);
  }

  /**
   * The least height in which so many columns take everything, or from a height on that is plenty,
   * everything but the cards.
   */
  double heightMm(int columns, double plentyMm) {
    Panel everything = with(cards.size());
    Panel withoutCards = with(0);
    double height = STEP;
    while (everything.columns(height) > columns
        && (height < plentyMm || withoutCards.columns(height) > columns)) {
      height += STEP;
    }
    return height;
  }

  /** The cards that a panel holds none of. */
  List<PanelItem> left(Panel panel) {
    return cards.stream().filter(card -> !panel.items().contains(card)).toList();
  }

  private Panel with(int firstCards) {
    List<PanelItem> items = new ArrayList<>();
    items.add(scaleBar);
    items.addAll(cards.subList(0, firstCards));
    items.addAll(legend);
    return new Panel(items);
  }
}
