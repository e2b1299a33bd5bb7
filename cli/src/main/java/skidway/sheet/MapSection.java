package skidway.sheet;

/**
 * Puts the map on the page: at full size and moved sideways with a finger on a phone, or whole at a
 * tick; on a sheet of its own on paper.
 */
final class MapSection {
  private MapSection() {}

  static void write(Markup page, String svg) {
    write(page, "Stack map", svg);
  }

  static void write(Markup page, String heading, String svg) {
    page.open("section", "id", "map").leaf("h2", heading);
    page.empty("input", "type", "checkbox", "id", "whole");
    page.leaf("label", "whole map at once", "for", "whole");
    page.open("div", "class", "sheet", "tabindex", "0").line();
    page.verbatim(svg).line().close().close().line();
  }
}
