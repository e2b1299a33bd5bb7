package skidway.survey;

/**
 * One question about a site.
 *
 * @param words what is asked
 * @param usual the answer of an empty line; an empty text when there is none
 * @param example of an answer
 * @param help what the answer means
 */
public record Question(String words, String usual, String example, String help) {}
