package skidway.site;

/** The long side of a spot from which people take pieces, seen along the spot's heading. */
public enum OpenSide {
  LEFT,
  RIGHT
}
