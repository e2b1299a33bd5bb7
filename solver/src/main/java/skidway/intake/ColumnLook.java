package skidway.intake;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Judges by a column's cells what it can be. All shares are assumptions: they only order proposals,
 * which a person sees and corrects.
 *
 * @param cells those with text, of the first rows
 */
record ColumnLook(List<Cell> cells, Set<String> walls, Predicate<String> wood) {
  /** Enough to know a column by. */
  static final int ROWS_LOOKED_AT = 300;

  /** Fewer rows numbered from 1 prove nothing. */
  private static final int FEWEST_NUMBERED = 8;

  private static final Pattern DIGIT = Pattern.compile("\\d");
  private static final Pattern NO_FRACTION = Pattern.compile("\\.0+$");
  private static final Pattern LENGTH =
      Pattern.compile(
          "-?[\\d][\\d .,'\"/\u2019\u2032\u2033\u201d-]*(mm|cm|m|in|ft|мм|см|м)?[\\d '\"/-]*");
  private static final Pattern WITH_UNIT =
      Pattern.compile("\\d.*(mm|cm|m|'|\"|in|ft|мм|м|\u2019|\u2032|\u201d|\u2033)\\s*$");
  private static final Pattern SECTION =
      Pattern.compile(
          "\\d[\\d.,/ \"'-]*\\s*(mm|cm|in)?\\s*[xX\u00d7*хХ/]\\s*\\d[\\d.,/ \"'-]*\\s*(mm|cm|in)?");
  private static final Pattern WHOLE = Pattern.compile("\\d{1,6}(\\.0+)?");
  private static final Pattern COURSES =
      Pattern.compile("\\d{1,4}( ?([-\u2013]|to|bis) ?\\d{1,4})?");
  private static final Pattern NUMBER = Pattern.compile("\\d[\\d.,]*( ?(kg|lb|lbs|t))?");
  private static final Pattern MOISTURE =
      Pattern.compile(
          "\\d[\\d.,]*( ?%)?( ?[-\u2013] ?\\d[\\d.,]* ?%?){0,2}|green|frisch|waldfrisch");

  /** How well the cells fit a meaning, 0 to 1. */
  double fit(Meaning meaning) {
    if (cells.isEmpty()) {
      return 0;
    }
    return switch (meaning) {
      case MARK -> distinctShare() * (numbersTheRows() ? 0.3 : 1);
      case WALL -> Math.max(share(walls::contains), 0.8 * fewDistinct());
      case COURSE -> share(t -> COURSES.matcher(t).matches());
      case POSITION -> numbersTheRows() ? 0 : share(t -> WHOLE.matcher(t).matches());
      case LENGTH, WIDTH, HEIGHT, THICKNESS, FROM_LEFT -> share(t -> LENGTH.matcher(t).matches());
      case SECTION -> share(t -> SECTION.matcher(t).matches());
      case SPECIES -> share(wood) > 0.9 ? 1 : share(ColumnLook::letters) * fewDistinct();
      case MOISTURE -> share(t -> MOISTURE.matcher(t.toLowerCase(Locale.ROOT)).matches());
      case BUNDLE, LOAD -> fewDistinct();
      case LAYER, COUNT, OFF_ORDER -> share(t -> WHOLE.matcher(t).matches());
      case WEIGHT -> share(t -> NUMBER.matcher(t.toLowerCase(Locale.ROOT)).matches());
    };
  }

  /** How strongly the cells alone suggest a meaning, without a word in the header. */
  double alone(Meaning meaning) {
    return switch (meaning) {
      case LENGTH -> share(t -> WITH_UNIT.matcher(t.toLowerCase(Locale.ROOT)).matches());
      case SECTION -> share(t -> SECTION.matcher(t).matches());
      case SPECIES -> share(wood);
      case WALL -> walls.isEmpty() ? 0 : share(walls::contains);
      case MARK -> share(t -> letters(t) && DIGIT.matcher(t).find()) * distinctShare();
      default -> 0;
    };
  }

  private double share(Predicate<String> test) {
    return (double) cells.stream().filter(c -> test.test(c.text())).count() / cells.size();
  }

  private double distinctShare() {
    return (double) distinct() / cells.size();
  }

  private int distinct() {
    Set<String> texts = new HashSet<>();
    cells.forEach(c -> texts.add(c.text()));
    return texts.size();
  }

  /** Names of walls, woods and bundles come again; of a few rows nothing can be said. */
  private double fewDistinct() {
    return cells.size() < 4 ? 1 : 1 - 0.8 * (distinct() - 1) / (cells.size() - 1);
  }

  /** Row numbers, perhaps with the word of a total below them. */
  private boolean numbersTheRows() {
    int numbered = 0;
    for (Cell cell : cells) {
      if (NO_FRACTION
          .matcher(cell.text())
          .replaceFirst("")
          .equals(Integer.toString(numbered + 1))) {
        numbered++;
      }
    }
    return numbered >= FEWEST_NUMBERED && numbered >= 0.9 * cells.size();
  }

  private static boolean letters(String text) {
    return text.chars().anyMatch(Character::isLetter);
  }
}
