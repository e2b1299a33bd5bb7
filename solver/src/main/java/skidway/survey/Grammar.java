package skidway.survey;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.units.Nearest;

/**
 * What may be said of a kind of thing, in any order, each once: {@code wide 10'} or {@code 10'
 * wide}, {@code soil clay}, {@code walkable}.
 */
final class Grammar {
  private final String kind;
  private final Map<String, Clause> clauses = new LinkedHashMap<>();

  /**
   * @param kind the thing with its article, as in {@code a yard}
   */
  Grammar(String kind) {
    this.kind = kind;
  }

  Grammar length(String word, Bounds bounds) {
    clauses.put(word, new Clause(Optional.of(bounds), true, List.of()));
    return this;
  }

  Grammar quantity(String word, Bounds bounds) {
    clauses.put(word, new Clause(Optional.of(bounds), false, List.of()));
    return this;
  }

  /** Followed by a name or text. */
  Grammar name(String word) {
    clauses.put(word, new Clause(Optional.empty(), true, List.of()));
    return this;
  }

  Grammar choice(String word, List<String> words) {
    clauses.put(word, new Clause(Optional.empty(), true, words));
    return this;
  }

  /** Stands alone. */
  Grammar flag(String word) {
    clauses.put(word, new Clause(Optional.empty(), false, List.of()));
    return this;
  }

  /** Where it is, told from a wall, and how large. */
  Grammar beside() {
    return along().length("off", Bounds.DISTANCE).length("inside", Bounds.DISTANCE);
  }

  /** Where along a wall it is. */
  Grammar along() {
    return length("from", Bounds.DISTANCE).flag("middle").flag("full");
  }

  Clauses read(LineScanner line) {
    Map<String, Clauses.Said> said = new LinkedHashMap<>();
    Place start = line.here();
    while (!line.done()) {
      Place place = line.here();
      boolean lengthFirst = line.atNumber();
      String word = lengthFirst ? line.afterLength() : line.peek();
      Clause clause = clauses.get(word);
      if (clause == null || (lengthFirst && !clause.isLength())) {
        throw unknown(line, word, place);
      }
      if (said.containsKey(word)) {
        throw line.refuse(
            place, "a second \"" + word + '"', "it is said once", "remove one of them");
      }
      said.put(word, lengthFirst ? lengthFirst(line, word, clause) : wordFirst(line, word, clause));
    }
    return new Clauses(line, kind, start, said);
  }

  private Clauses.Said lengthFirst(LineScanner line, String word, Clause clause) {
    Measured length = line.quantity(clause.bounds().orElseThrow());
    line.take(word);
    return new Clauses.Said(length.place(), Optional.of(length), follows(line, word));
  }

  private Clauses.Said wordFirst(LineScanner line, String word, Clause clause) {
    Place place = line.here();
    line.take(word);
    if (word.equals("full")) {
      line.expect("length", "full length");
    }
    if (clause.bounds().isPresent()) {
      Measured quantity = line.quantity(clause.bounds().get());
      return new Clauses.Said(place, Optional.of(quantity), follows(line, word));
    }
    if (!clause.wordFollows()) {
      return new Clauses.Said(place, Optional.empty(), Optional.empty());
    }
    if (clause.words().isEmpty()) {
      return new Clauses.Said(place, Optional.empty(), Optional.of(line.name('"' + word + '"')));
    }
    Place at = line.here();
    int index = line.oneOf('"' + word + '"', clause.words());
    LocatedNode.Text chosen = new LocatedNode.Text(at, clause.words().get(index));
    return new Clauses.Said(place, Optional.empty(), Optional.of(chosen));
  }

  /** Some lengths need one more word: off which wall, from which end. */
  private static Optional<LocatedNode.Text> follows(LineScanner line, String word) {
    if (word.equals("off") || word.equals("inside")) {
      return Optional.of(line.name("a wall"));
    }
    if (!word.equals("from")) {
      return Optional.empty();
    }
    Place at = line.here();
    int end = line.oneOf("an end of a wall, seen from outside,", List.of("left", "right"));
    return Optional.of(new LocatedNode.Text(at, end == 0 ? "left" : "right"));
  }

  private Misread unknown(LineScanner line, String word, Place place) {
    String found = word.isEmpty() ? line.foundHere() : '"' + word + '"';
    return line.refuse(
        place,
        found + " of " + kind + Nearest.hint(word, clauses.keySet()),
        "of " + kind + " may be said: " + String.join(", ", clauses.keySet()),
        "correct it, or begin a new line");
  }

  /**
   * A word that may be said.
   *
   * @param bounds of the quantity that belongs to it
   * @param wordFollows whether a name, or one of some words, stands after it
   * @param words that may; any, when empty
   */
  private record Clause(Optional<Bounds> bounds, boolean wordFollows, List<String> words) {
    boolean isLength() {
      return bounds.isPresent() && wordFollows;
    }
  }
}
