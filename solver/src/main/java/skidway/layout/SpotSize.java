package skidway.layout;

import skidway.site.SpotKind;

/** A size in which spots are laid out. */
record SpotSize(SpotKind kind, double lengthM, double widthM) {}
