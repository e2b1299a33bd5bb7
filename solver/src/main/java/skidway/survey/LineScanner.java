package skidway.survey;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.job.Quote;
import skidway.job.SourceFile;
import skidway.job.Values;
import skidway.units.Measure;
import skidway.units.Nearest;

/**
 * Reads one line from left to right. Commas count as spaces except within a number. What does not
 * fit is told at its place, and the rest of the line is left.
 */
final class LineScanner {
  private static final Pattern WORD = Pattern.compile("[^\\s,\"#]+");
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");
  private static final Pattern NUMBER_BEGINS = Pattern.compile("-?\\.?[\\d½¼¾⅛⅜⅝⅞]");
  private static final Pattern MAY_FOLLOW_A_QUANTITY = Pattern.compile(",(?!\\d)|#");
  private static final Pattern UP_TO_A_SPACE = Pattern.compile("\\S+");
  private static final Pattern WORD_AFTER = Pattern.compile("[\\s,]*([^\\s,\"#]+)");

  private final SourceFile file;
  private final int line;
  private final Values values;
  private final String text;
  private int at;

  LineScanner(SourceFile file, int line, Values values) {
    this.file = file;
    this.line = line;
    this.values = values;
    this.text = Wording.plain(file.line(line));
    skip();
  }

  Place here() {
    return file.at(line, at + 1);
  }

  Values values() {
    return values;
  }

  /** Whether nothing but a remark is left. */
  boolean done() {
    return at >= text.length() || text.charAt(at) == '#';
  }

  /** The next word in small letters, or an empty text. */
  String peek() {
    Matcher m = from(at, WORD);
    return m.lookingAt() ? m.group().toLowerCase(Locale.ROOT) : "";
  }

  boolean atNumber() {
    return from(at, NUMBER_BEGINS).lookingAt();
  }

  private Matcher from(int start, Pattern pattern) {
    return pattern.matcher(text).region(start, text.length());
  }

  /** Goes past a word if it is the next one. */
  boolean take(String word) {
    if (done() || !peek().equals(word)) {
      return false;
    }
    move(at + word.length());
    return true;
  }

  /** Goes past words that must stand here, such as {@code to} or {@code in}. */
  void expect(String word, String example) {
    if (!take(word)) {
      throw refuse(here(), foundHere(), "here stands \"" + word + '"', "write it as in " + example);
    }
  }

  /** The index of the word that stands here. */
  int oneOf(String what, List<String> words) {
    String found = peek();
    int index = words.indexOf(found);
    if (index < 0) {
      throw refuse(
          here(),
          foundHere() + " as " + what + Nearest.hint(found, words),
          what + " is one of " + String.join(", ", words),
          "correct it");
    }
    take(found);
    return index;
  }

  /** A name: a word, or words in double quotes. Its form is judged where all ids are. */
  LocatedNode.Text name(String what) {
    Place place = here();
    Matcher quoted = from(at, QUOTED);
    if (!done() && quoted.lookingAt()) {
      String original = file.line(line).substring(at + 1, quoted.end() - 1);
      move(quoted.end());
      return new LocatedNode.Text(place, original);
    }
    Matcher word = from(at, WORD);
    if (done() || !word.lookingAt()) {
      String allowed = what + " is a word, or words in double quotes";
      throw refuse(place, foundHere() + " as " + what, allowed, "write it there");
    }
    move(word.end());
    return new LocatedNode.Text(place, file.line(line).substring(word.start(), word.end()));
  }

  Measured quantity(Bounds bounds) {
    Place place = here();
    String found = quantityText(Wording.of(bounds.measure()), bounds);
    double si = values.read(place, bounds.range(), found);
    if (Double.isNaN(si)) {
      throw new Misread();
    }
    return new Measured(place, bounds.measure(), found, si);
  }

  private String quantityText(Pattern form, Bounds bounds) {
    if (done() || !atNumber()) {
      throw refuse(here(), foundHere(), values.allowed(bounds.measure()), "write it there");
    }
    Matcher m = from(at, form);
    int end = m.lookingAt() ? m.end() : at;
    boolean cut = end < text.length() && !Character.isWhitespace(text.charAt(end));
    boolean listed = cut && from(end, MAY_FOLLOW_A_QUANTITY).lookingAt();
    if (end == at || (cut && !listed)) {
      Matcher rest = from(end, UP_TO_A_SPACE);
      end = rest.lookingAt() ? rest.end() : end; // told whole, as what it is not
    }
    String found = file.line(line).substring(at, end);
    move(end);
    return found;
  }

  /** Goes past what a pattern describes, and gives its groups. */
  Optional<MatchResult> match(Pattern pattern) {
    Matcher m = from(at, pattern);
    if (done() || !m.lookingAt()) {
      return Optional.empty();
    }
    move(m.end());
    return Optional.of(m.toMatchResult());
  }

  /** The word after the length that stands here, or an empty text. */
  String afterLength() {
    Matcher m = from(at, Wording.of(Measure.LENGTH));
    if (!m.lookingAt()) {
      return "";
    }
    Matcher word = from(m.end(), WORD_AFTER);
    return word.lookingAt() ? word.group(1).toLowerCase(Locale.ROOT) : "";
  }

  void end(String allowed) {
    if (!done()) {
      throw refuse(here(), foundHere() + " after the end", allowed, "remove it");
    }
  }

  String foundHere() {
    return done() ? "the end of the line" : Quote.found(text.substring(at).split("[\\s,]", 2)[0]);
  }

  Misread refuse(Place place, String found, String allowed, String wayOut) {
    values.problems().add(place, found, allowed, wayOut);
    return new Misread();
  }

  private void move(int to) {
    at = to;
    skip();
  }

  private void skip() {
    while (at < text.length()
        && (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == ',')) {
      at++;
    }
  }
}
