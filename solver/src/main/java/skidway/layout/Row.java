package skidway.layout;

import skidway.site.OpenSide;

/** A row of spots: where its lower side lies and to which side it is open. */
record Row(Mark mark, OpenSide side) {}
