package skidway.layout;

import skidway.site.Spot;

/** A place for a spot, not yet numbered, with the rank of what put it there. */
record Ranked(Spot spot, int rank) {}
