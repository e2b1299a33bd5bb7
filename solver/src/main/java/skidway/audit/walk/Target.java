package skidway.audit.walk;

/**
 * A place that people have to get to.
 *
 * @param id what it belongs to
 * @param name in the yard's words, to go on a sentence with
 * @param cells it is reached when one of these is
 */
record Target(String id, String name, Cells cells) {
  boolean reached(byte[] marks) {
    return cells.any(marks, Flood.REACHED);
  }
}
