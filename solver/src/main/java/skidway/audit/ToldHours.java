package skidway.audit;

import skidway.rules.Rule;
import skidway.units.Figures;

/** Compares crew time that somebody states with the crew time that the audit finds. */
record ToldHours(Ledger ledger, Figures figures) {
  /** Times that are counted and not estimated agree to a second. */
  static final double EXACT_S = 1;

  /** What a plan may round away of each pick or walk. */
  static final double ROUNDED_S = 0.0005;

  /**
   * @param says who tells, to begin a sentence with: "The plan says"
   */
  void compare(
      Rule rule,
      String where,
      String says,
      String work,
      double toldS,
      double foundS,
      double toleranceS) {
    if (!(Math.abs(toldS - foundS) <= toleranceS)) {
      String told = figures.hours(toldS);
      String found = figures.hours(foundS);
      boolean same = told.equals(found);
      ledger.broken(
          rule,
          where,
          toldS,
          foundS,
          says
              + " "
              + (same ? figures.of(rule.measure(), toldS) : told)
              + " of "
              + work
              + ", the audit finds "
              + (same ? figures.of(rule.measure(), foundS) : found)
              + ".");
    }
  }
}
