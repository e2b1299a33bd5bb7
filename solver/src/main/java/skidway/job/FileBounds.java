package skidway.job;

/**
 * How large files and what is in them may be, so that a wrong file is refused before it fills the
 * memory. All are assumptions, far above any job, and stand here only.
 *
 * @see Bounds for the sizes of the things told
 */
final class FileBounds {
  static final int MOST_JSON_BYTES = 4_000_000;
  static final int MOST_CSV_BYTES = 32_000_000;
  static final int MOST_PLAN_BYTES = 32_000_000;
  static final int MOST_TEXT_BYTES = 1_000_000;

  /** Brackets within brackets. */
  static final int DEEPEST = 30;

  static final int LONGEST_NUMBER = 60;
  static final int LONGEST_FIELD_NAME = 200;
  static final int LONGEST_TEXT = 10_000;
  static final int LONGEST_CELL = 1000;

  /** Ids are painted on the ground and printed on tags. */
  static final int LONGEST_ID = 40;

  /** A text that stays on one line. */
  static final int LONGEST_LINE = 200;

  /** Every side of an outline is held against every other. */
  static final int MOST_CORNERS = 500;

  /** More of anything than a site has; what works on pairs stays quick below it. */
  static final int MOST_THINGS = 2000;

  /** Far more timbers than any building has. */
  static final int MOST_ROWS = 200_000;

  static final int MOST_PLAN_ENTRIES = 200_000;

  private FileBounds() {}
}
