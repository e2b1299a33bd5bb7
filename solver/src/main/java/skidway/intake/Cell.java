package skidway.intake;

/**
 * One cell of a list.
 *
 * @param text stripped; of a formula, its value
 * @param number whether the file holds a number, which has a point whatever the list's language
 * @param line line of the file, or row of the sheet; 1 is the first
 * @param column character of the line, or column of the sheet; 1 is the first
 */
record Cell(String text, boolean number, int line, int column) {
  boolean empty() {
    return text.isEmpty();
  }
}
