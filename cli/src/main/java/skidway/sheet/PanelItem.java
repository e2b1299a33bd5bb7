package skidway.sheet;

/** Something that stands in the panel beside the map: a line of the legend, a stack's tiers. */
interface PanelItem {
  double heightMm();

  /** Draws it with its upper left corner here. */
  void draw(Drawing drawing, PagePoint at);
}
