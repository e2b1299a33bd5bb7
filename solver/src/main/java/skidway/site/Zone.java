package skidway.site;

import java.util.OptionalDouble;

/** An area that stacks may stand on. */
public sealed interface Zone permits Deck, Yard {
  String id();

  Outline outline();

  /** Height of its surface above the ground around it, metres. */
  double heightM();

  /** Area load it is allowed to carry, kPa: the floor's posted allowance or the ground's. */
  double allowedKpa();

  /** Most that may lie on it altogether, kg, when somebody said so. */
  OptionalDouble totalKg();
}
