package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * Shares the paper out between title, map and panel: the panel goes to the side or below, wherever
 * the map comes out larger.
 *
 * @param frame where the site lies on paper
 * @param panelBox where the panel lies
 */
record MapLayout(Frame frame, Panel panel, Box panelBox) {
  private static final double GAP = 4;
  private static final double LEAST_MAP = 60;

  /**
   * @param panelAt the panel for a drawing at a scale
   */
  static MapLayout choose(Paper paper, Extent extent, Function<Scale, Panel> panelAt) {
    Box below = new Box(0, TitleBlock.HEIGHT, paper.widthMm(), paper.heightMm());
    List<MapLayout> all = new ArrayList<>();
    Panel rough = panelAt.apply(new Scale(100));
    int most = (int) ((below.width() - LEAST_MAP) / (Panel.COLUMN + Panel.GUTTER));
    int columns = Math.min(most, rough.columns(below.height()));
    double width = Panel.widthMm(columns);
    Box side = new Box(below.x1() - width, below.y0(), below.x1(), below.y1());
    Box left = new Box(below.x0(), below.y0(), side.x0() - GAP, below.y1());
    all.add(of(extent, left, side, panelAt));
    int across = (int) ((below.width() + Panel.GUTTER) / (Panel.COLUMN + Panel.GUTTER));
    for (double height = 10; height <= below.height() - LEAST_MAP; height += 1) {
      if (rough.columns(height) <= across) {
        Box foot = new Box(below.x0(), below.y1() - height, below.x1(), below.y1());
        Box top = new Box(below.x0(), below.y0(), below.x1(), foot.y0() - GAP);
        all.add(of(extent, top, foot, panelAt));
        break;
      }
    }
    return all.stream()
        .min(Comparator.comparingInt((MapLayout l) -> l.frame().scale().ratio()))
        .orElseThrow();
  }

  private static MapLayout of(
      Extent extent, Box map, Box panelBox, Function<Scale, Panel> panelAt) {
    Scale scale = Scale.toFit(extent.widthM(), extent.heightM(), map.width(), map.height());
    Frame frame = new Frame(scale, extent.middle(), map);
    return new MapLayout(frame, panelAt.apply(scale), panelBox);
  }
}
