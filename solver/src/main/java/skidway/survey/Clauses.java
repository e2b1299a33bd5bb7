package skidway.survey;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import skidway.job.LocatedNode;
import skidway.job.Place;

/** What one line says of its thing, by its words. */
final class Clauses {
  private final LineScanner line;
  private final String kind;
  private final Place start;
  private final Map<String, Said> said;

  Clauses(LineScanner line, String kind, Place start, Map<String, Said> said) {
    this.line = line;
    this.kind = kind;
    this.start = start;
    this.said = said;
  }

  /**
   * One thing said.
   *
   * @param quantity with it, for example how wide
   * @param word with it, for example off which wall
   */
  record Said(Place place, Optional<Measured> quantity, Optional<LocatedNode.Text> word) {}

  Place start() {
    return start;
  }

  boolean has(String word) {
    return said.containsKey(word);
  }

  Optional<Said> said(String word) {
    return Optional.ofNullable(said.get(word));
  }

  Optional<Measured> quantity(String word) {
    return said(word).flatMap(Said::quantity);
  }

  Optional<LocatedNode.Text> word(String word) {
    return said(word).flatMap(Said::word);
  }

  /** A quantity that has to be there. */
  Measured needed(String word, String example) {
    return quantity(word).orElseThrow(() -> missing('"' + word + '"', example));
  }

  LocatedNode.Text neededWord(String word, String example) {
    return word(word).orElseThrow(() -> missing('"' + word + '"', example));
  }

  void ifQuantity(String word, Consumer<Measured> use) {
    quantity(word).ifPresent(use);
  }

  Misread missing(String what, String example) {
    return line.refuse(
        start, kind + " without " + what, "it is said as in " + example, "add it to the line");
  }

  Misread refuse(Place place, String found, String allowed, String wayOut) {
    return line.refuse(place, found, allowed, wayOut);
  }
}
