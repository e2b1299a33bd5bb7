package skidway.survey;

import skidway.units.UnitSystem;

/** What all lines are read with. */
record Setup(UnitSystem units, Nodes nodes, Directions directions, House house) {
  Setup(UnitSystem units, Directions directions, House house) {
    this(units, new Nodes(units), directions, house);
  }
}
