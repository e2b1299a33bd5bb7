package skidway.intake;

/**
 * How much of a packing list is read. Each limit is far above any list of timbers and low enough
 * that a spoiled or hostile file costs neither the machine's memory nor minutes. All are
 * assumptions and stand here only.
 */
final class ListLimits {
  /** A list of 20,000 timbers is about 1 MB as a spreadsheet and 3 MB as text. */
  static final int MOST_FILE_BYTES = 32_000_000;

  /** A spreadsheet's files unpacked; 20,000 timbers with a dozen columns take about 15 MB. */
  static final long MOST_UNPACKED_BYTES = 200_000_000L;

  /** Files packed in a spreadsheet; one of a hundred sheets has about two hundred. */
  static final int MOST_PACKED_FILES = 2_000;

  /**
   * Unpacked over packed size of one packed file. Tables repeat themselves and reach about 30; only
   * what was made to burst goes to a thousand, the most that the packing can do.
   */
  static final int MOST_RATIO = 200;

  /** Below this size the ratio does no harm. */
  static final long HARMLESS_BYTES = 1_000_000;

  /** As many as a job's table may have. */
  static final int MOST_ROWS = 200_000;

  static final int MOST_COLUMNS = 200;

  /** Cells with text in them. */
  static final int MOST_CELLS = 4_000_000;

  /** As long as a cell of a job's table may be. */
  static final int LONGEST_CELL = 1_000;

  /** Tags within tags; a sheet has half a dozen. */
  static final int DEEPEST_NESTING = 100;

  /** Equal pieces in one row. */
  static final int MOST_PER_ROW = 1_000;

  private ListLimits() {}
}
