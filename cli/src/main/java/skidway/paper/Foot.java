package skidway.paper;

/**
 * What stands below every page beside its number.
 *
 * @param words which job, revision and plan this is
 * @param caution what the figures do not replace; may be empty, then the foot is one line
 * @param sidesMm free at both sides
 */
public record Foot(String words, String caution, double sidesMm) {}
