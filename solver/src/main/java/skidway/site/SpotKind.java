package skidway.site;

/** What stands on a spot. */
public enum SpotKind {
  /** Bundles one on another. */
  STACK,
  /** Short pieces on end, side by side; any of them can be taken. */
  RACK
}
