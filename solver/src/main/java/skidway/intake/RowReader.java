package skidway.intake;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.units.Measure;
import skidway.units.Quantities;
import skidway.units.UnitSystem;
import skidway.units.UnreadableQuantity;

/** Reads the fields of one row; what is wrong becomes a problem at its cell. */
final class RowReader {
  private static final Pattern WHOLE = Pattern.compile("(\\d{1,6})(?:\\.0+)?(?: ?\\p{L}+\\.?)?");
  private static final Pattern COURSES =
      Pattern.compile("(\\d{1,4})(?:\\.0+)?(?: ?(?:[-\u2013]|to|bis) ?(\\d{1,4}))?");
  private static final Set<String> GREEN =
      Set.of(
          "green",
          "fresh",
          "frisch",
          "waldfrisch",
          "grun",
          "vert",
          "verde",
          "ra",
          "tuore",
          "swieze",
          "сырои");
  private static final Set<Meaning> GROUPS =
      Set.of(Meaning.BUNDLE, Meaning.LOAD, Meaning.WALL, Meaning.SPECIES);

  private final ListTable table;
  private final Trouble trouble;
  private final boolean moistureInShares;
  private final Map<Meaning, String> above = new EnumMap<>(Meaning.class);
  private final Map<Meaning, Integer> filled = new EnumMap<>(Meaning.class);
  private final Map<String, Optional<LengthText>> lengths = new HashMap<>();

  private final Map<String, Optional<SectionText>> sections = new HashMap<>();

  /** Lengths and sections repeat; so many different ones are remembered. */
  private static final int MOST_REMEMBERED = 5000;

  RowReader(ListTable table, Trouble trouble, boolean moistureInShares) {
    this.table = table;
    this.trouble = trouble;
    this.moistureInShares = moistureInShares;
  }

  /** A text; an empty cell of a group takes what stands above it. */
  String text(ListRow row, Meaning meaning) {
    String text = table.text(row, meaning);
    if (!GROUPS.contains(meaning) || !table.columns().containsKey(meaning)) {
      return text;
    }
    if (text.isEmpty() && above.containsKey(meaning)) {
      filled.merge(meaning, 1, Integer::sum);
      return above.getOrDefault(meaning, "");
    }
    if (!text.isEmpty()) {
      above.put(meaning, text);
    }
    return text;
  }

  /** How many empty cells took what stands above them, by field. */
  Map<Meaning, Integer> filled() {
    return filled;
  }

  /** A whole number from 1 on; empty after a problem. */
  Optional<Integer> whole(ListRow row, Meaning meaning, int most) {
    int number = whole(table.plain(row, meaning).orElse("").strip());
    if (number < 1 || number > most) {
      wrong(row, meaning, "a whole number from 1 to " + most, "correct it in the list");
      return Optional.empty();
    }
    return Optional.of(number);
  }

  private static int whole(String text) {
    if (Digits.only(text, 6)) {
      return Integer.parseInt(text);
    }
    Matcher m = WHOLE.matcher(text);
    return m.matches() ? Integer.parseInt(m.group(1)) : 0;
  }

  /** First and last of a range of courses, such as {@code 3-6}; empty after a problem. */
  Optional<int[]> courses(ListRow row, String text) {
    String plain = text.strip();
    if (Digits.only(plain, 4) && Integer.parseInt(plain) >= 1) {
      int course = Integer.parseInt(plain);
      return Optional.of(new int[] {course, course});
    }
    Matcher m = COURSES.matcher(plain);
    if (m.matches()) {
      int first = Integer.parseInt(m.group(1));
      int last = m.group(2) == null ? first : Integer.parseInt(m.group(2));
      if (first >= 1 && last >= first) {
        return Optional.of(new int[] {first, last});
      }
    }
    wrong(
        row,
        Meaning.COURSE,
        "a course such as 3, or courses such as 3-6",
        "correct it in the list");
    return Optional.empty();
  }

  /** A length; empty after a problem. */
  Optional<LengthText> length(ListRow row, Meaning meaning) {
    Optional<String> plain = plain(row, meaning);
    if (plain.isEmpty()) {
      return Optional.empty();
    }
    Optional<ListUnit> unit = table.unit(meaning);
    Optional<LengthText> length = lengths.get(plain.get() + unit.map(ListUnit::word).orElse(""));
    if (length == null) {
      length = LengthText.read(plain.get(), unit);
      if (lengths.size() < MOST_REMEMBERED) {
        lengths.put(plain.get() + unit.map(ListUnit::word).orElse(""), length);
      }
    }
    if (length.filter(l -> l.metres() > 0 || meaning == Meaning.FROM_LEFT).isEmpty()) {
      wrong(
          row,
          meaning,
          "a length such as 4990 mm, 4.99 m or 16'-4 1/2\", or a number in the column's unit",
          "correct it, or name another column or --unit " + meaning.word() + "=ft-in");
      return Optional.empty();
    }
    return length;
  }

  /** Width and height in one cell; empty after a problem. */
  Optional<SectionText> section(ListRow row) {
    Optional<String> plain = plain(row, Meaning.SECTION);
    if (plain.isEmpty()) {
      return Optional.empty();
    }
    Optional<SectionText> section = sections.get(plain.get());
    if (section == null) {
      section = SectionText.read(plain.get(), table.unit(Meaning.SECTION));
      if (sections.size() < MOST_REMEMBERED) {
        sections.put(plain.get(), section);
      }
    }
    if (section.isEmpty()) {
      wrong(row, Meaning.SECTION, "width and height such as 150x200 or 6\" x 8\"", "correct it");
    }
    return section;
  }

  /** Kilograms of a weight; empty if there is none. */
  Optional<Double> kilograms(ListRow row) {
    if (table.text(row, Meaning.WEIGHT).isEmpty()) {
      return Optional.empty();
    }
    Optional<String> plain = plain(row, Meaning.WEIGHT);
    if (plain.isEmpty()) {
      return Optional.empty();
    }
    String text = plain.get().toLowerCase(Locale.ROOT).replace("кг", "kg");
    String unit = table.unit(Meaning.WEIGHT).map(ListUnit::word).orElse("");
    try {
      return Optional.of(
          new Quantities(UnitSystem.METRIC)
              .read(Measure.MASS, LengthText.isBare(text) ? text + " " + unit : text));
    } catch (UnreadableQuantity e) {
      wrong(
          row, Meaning.WEIGHT, "a weight such as 43 kg or 95 lb", "correct it, or leave it empty");
      return Optional.empty();
    }
  }

  /** Moisture as the job reads it. */
  String moisture(ListRow row) {
    String plain = table.plain(row, Meaning.MOISTURE).orElse("").strip();
    if (GREEN.contains(Headline.plain(plain))) {
      return "green";
    }
    if (moistureInShares && LengthText.isBare(plain)) {
      return new BigDecimal(plain).movePointRight(2).stripTrailingZeros().toPlainString();
    }
    return plain;
  }

  private Optional<String> plain(ListRow row, Meaning meaning) {
    String text = table.text(row, meaning);
    if (text.isEmpty()) {
      wrong(row, meaning, "a timber has one", "fill it in");
      return Optional.empty();
    }
    Optional<String> plain = table.plain(row, meaning);
    if (plain.isEmpty()) {
      wrong(
          row,
          meaning,
          "a number with one reading; nothing in the list shows what a comma means",
          "add --decimal comma or --decimal point");
    }
    return plain;
  }

  void wrong(ListRow row, Meaning meaning, String allowed, String wayOut) {
    trouble.add(
        table.cell(row, meaning),
        Trouble.quote(table.text(row, meaning))
            + " as "
            + meaning.word()
            + " in "
            + table.place(row, meaning),
        allowed,
        wayOut);
  }
}
