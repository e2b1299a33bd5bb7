package skidway.bound;

/** Says of plans which rules they keep. */
public interface Judge {
  /** What can be said of a plan. */
  enum Verdict {
    /** It breaks a rule that a bound may count on; it is no plan. */
    ILLEGAL,

    /** It breaks only rules that a bound ignores. */
    LEGAL,

    /** It keeps all rules. */
    SOUND
  }

  /**
   * What can be said of a plan.
   *
   * @param spotOf the spot of each bundle
   */
  Verdict verdict(int[] spotOf);
}
