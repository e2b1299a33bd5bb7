package skidway.site;

/** An area that stacks may stand on. */
public sealed interface Zone permits Deck, Yard {
  String id();

  Outline outline();

  /** Height of its surface above the ground around it, metres. */
  double heightM();

  /** Area load it is allowed to carry, kPa: the floor's posted allowance or the ground's. */
  double allowedKpa();
}
