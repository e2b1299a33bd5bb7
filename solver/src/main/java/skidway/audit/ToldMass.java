package skidway.audit;

import skidway.rules.Rule;
import skidway.units.Figures;

/** Checks that a weight which people read is not less than it is. */
record ToldMass(Ledger ledger, Figures figures) {
  /** Weights may be written rounded to this many kilograms. */
  static final double ROUNDING_KG = 1;

  /**
   * @param words that begin the sentence, up to the figure told
   */
  void atMost(Rule rule, String where, String words, double toldKg, double foundKg) {
    if (!(toldKg >= foundKg - ROUNDING_KG)) {
      broken(rule, where, words, toldKg, foundKg);
    }
  }

  /** Notes that it is otherwise; {@code words} as for {@link #atMost}. */
  void broken(Rule rule, String where, String words, double toldKg, double foundKg) {
    ledger.broken(
        rule,
        where,
        toldKg,
        foundKg,
        words + figures.mass(toldKg) + ", the audit finds " + figures.mass(foundKg) + ".");
  }
}
