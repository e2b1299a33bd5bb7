package skidway.sheet;

import java.util.List;

/**
 * Puts the map on the page: on paper and wide screens the pages for a printer, each on a sheet of
 * its own; on a phone drawings as wide as its screen, which fingers enlarge.
 */
final class MapSection {
  private MapSection() {}

  static void write(Markup page, List<MapSheet> sheets, List<MapSheet> narrow) {
    page.open("section", "id", "map").leaf("h2", "Stack map");
    for (MapSheet sheet : sheets) {
      sheet(page, sheet, sheet.paper().lying() ? "sheet wide lying" : "sheet wide standing");
    }
    for (MapSheet sheet : narrow) {
      sheet(page, sheet, "sheet narrow");
    }
    page.close().line();
  }

  private static void sheet(Markup page, MapSheet sheet, String look) {
    page.open("div", "class", look).leaf("h3", sheet.name()).line();
    page.verbatim(sheet.svg()).line().close().line();
  }

  /** One drawing by itself, as wide as the page. */
  static void write(Markup page, String heading, String svg) {
    page.open("section", "id", "map").leaf("h2", heading);
    page.open("div", "class", "sheet", "tabindex", "0").line();
    page.verbatim(svg).line().close().close().line();
  }
}
