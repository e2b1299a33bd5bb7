package skidway.audit.walk;

import java.util.List;
import skidway.audit.plane.Polygon;
import skidway.site.Deck;
import skidway.site.Point;
import skidway.site.Site;

/** Tells on which level a cell lies: 0 is the ground, decks too high to step onto count from 1. */
record Levels(Site site, double stepOverM) {

  /** Decks of one height are one level. */
  byte[] draw(WalkGrid grid) {
    byte[] level = new byte[grid.size()];
    List<Double> heights = heights();
    for (Deck deck : site.decks()) {
      byte number = (byte) (heights.indexOf(deck.heightM()) + 1);
      if (number > 0) {
        grid.markInside(level, number, Polygon.of(deck.outline()));
      }
    }
    return level;
  }

  byte at(Point p) {
    byte level = 0;
    for (Deck deck : site.decks()) {
      if (Polygon.of(deck.outline()).contains(p)) {
        level |= (byte) (heights().indexOf(deck.heightM()) + 1);
      }
    }
    return level;
  }

  private List<Double> heights() {
    return site.decks().stream()
        .map(Deck::heightM)
        .filter(height -> height > stepOverM)
        .distinct()
        .sorted()
        .toList();
  }
}
