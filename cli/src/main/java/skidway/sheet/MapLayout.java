package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import skidway.units.UnitSystem;

/**
 * Shares the paper out between title, map and panel: the panel goes to the side or below, wherever
 * the map comes out larger. The map keeps half of the paper; stacks that find no room in the panel
 * are shown on a page after it.
 *
 * @param frame where the site lies on paper
 * @param view as far as it shows there
 * @param all that belongs beside the map
 * @param panel as much of it as finds room there
 * @param panelBox where the panel lies
 */
record MapLayout(Paper paper, Frame frame, MapView view, MapPanel all, Panel panel, Box panelBox) {
  /** Width of a drawing for a phone: two columns of the panel. */
  private static final double NARROW = 2 * Panel.COLUMN + Panel.GUTTER;

  private static final double TALLEST_NARROW = 150;
  private static final double LEAST_NARROW = 70;
  private static final double GAP = 4;
  private static final double MOST = 0.5;

  private static final Comparator<MapLayout> BEST =
      Comparator.comparing((MapLayout l) -> !l.panelFits())
          .thenComparingInt(l -> l.frame().scale().ratio())
          .thenComparingInt(l -> l.left().size());

  /** On the paper that makes the map largest; the first named, when it makes no difference. */
  static MapLayout choose(List<Paper> papers, MapView view, Set<String> untold) {
    return papers.stream()
        .flatMap(paper -> Stream.of(side(paper, view, untold), foot(paper, view, untold)))
        .min(BEST)
        .orElseThrow();
  }

  private static MapLayout side(Paper paper, MapView view, Set<String> untold) {
    Box below = below(paper);
    int most = Math.max(1, (int) (below.width() * MOST / (Panel.COLUMN + Panel.GUTTER)));
    for (int columns = 1; ; columns++) {
      double x = below.x1() - Panel.widthMm(columns);
      Box map = new Box(below.x0(), below.y0(), x - GAP, below.y1());
      Box side = new Box(x, below.y0(), below.x1(), below.y1());
      MapLayout layout = of(paper, view, untold, map, side, columns);
      if (layout.left().isEmpty() || columns == most) {
        return layout;
      }
    }
  }

  private static MapLayout foot(Paper paper, MapView view, Set<String> untold) {
    Box below = below(paper);
    int across = (int) ((below.width() + Panel.GUTTER) / (Panel.COLUMN + Panel.GUTTER));
    double height = 0;
    while (true) {
      Box foot = new Box(below.x0(), below.y1() - height, below.x1(), below.y1());
      Box map = new Box(below.x0(), below.y0(), below.x1(), foot.y0() - GAP);
      MapLayout layout = of(paper, view, untold, map, foot, across);
      double needed = layout.all().heightMm(across, MOST * below.height());
      if (needed <= height) {
        return layout;
      }
      height = needed;
    }
  }

  /** Cards that found no room in the panel. */
  List<PanelItem> left() {
    return all.left(panel);
  }

  private boolean panelFits() {
    return Panel.widthMm(panel.columns(panelBox.height())) <= panelBox.width() + 1e-6;
  }

  private static Box below(Paper paper) {
    return new Box(0, TitleBlock.HEIGHT, paper.widthMm(), paper.heightMm());
  }

  private static MapLayout of(
      Paper paper, MapView view, Set<String> untold, Box map, Box panelBox, int columns) {
    UnitSystem units = view.task().figures().units();
    Extent extent = view.extent();
    Scale scale = Scale.toFit(units, extent.widthM(), extent.heightM(), map.width(), map.height());
    Frame frame = new Frame(scale, extent.middle(), map);
    MapView seen = view.within(frame.window());
    MapPanel all = MapPanel.of(seen, scale, untold);
    Panel panel = all.fitting(columns, panelBox.height());
    return new MapLayout(paper, frame, seen, all, panel, panelBox);
  }

  /** For a phone: the map as wide as the screen, everything else below it, as long as it gets. */
  static MapLayout narrow(MapView view, Set<String> untold) {
    Extent extent = view.extent();
    Scale scale = Scale.filling(extent.widthM(), extent.heightM(), NARROW, TALLEST_NARROW);
    Box map = Box.at(0, 0, NARROW, Math.max(LEAST_NARROW, scale.mm(extent.heightM())));
    Frame frame = new Frame(scale, extent.middle(), map);
    MapView seen = view.within(frame.window());
    MapPanel all = MapPanel.of(seen, scale, untold);
    double height = all.heightMm(2, Double.POSITIVE_INFINITY);
    Box panelBox = Box.at(0, map.y1() + GAP, NARROW, height);
    Paper paper = new Paper(NARROW, Math.max(NARROW, panelBox.y1()));
    return new MapLayout(paper, frame, seen, all, all.fitting(2, height), panelBox);
  }

  /** Pages of cards alone, for those that found no room beside the map. */
  List<Panel> morePages() {
    Box below = below(paper);
    int across = (int) ((below.width() + Panel.GUTTER) / (Panel.COLUMN + Panel.GUTTER));
    List<Panel> pages = new ArrayList<>();
    List<PanelItem> page = new ArrayList<>();
    for (PanelItem card : left()) {
      page.add(card);
      if (new Panel(page).columns(below.height()) > across) {
        page.remove(card);
        pages.add(new Panel(List.copyOf(page)));
        page.clear();
        page.add(card);
      }
    }
    if (!page.isEmpty()) {
      pages.add(new Panel(List.copyOf(page)));
    }
    return pages;
  }

  /** Where the cards of a page of their own begin. */
  Box wholePage() {
    return below(paper);
  }
}
