package skidway.intake;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One column of a list and what it is taken for.
 *
 * @param index counted from 0
 * @param samples its first three cells below the header
 * @param meaning empty if it is ignored
 * @param why where the meaning comes from, for the person to judge
 * @param unit of its bare numbers, if they have one
 */
public record Column(
    int index,
    String header,
    List<String> samples,
    Optional<Meaning> meaning,
    String why,
    Optional<ListUnit> unit) {

  /** The letter by which spreadsheets call it. */
  public String letter() {
    return letter(index);
  }

  /** What it is taken for, in words. */
  public String takenFor() {
    return meaning.map(m -> m.word() + unit.map(u -> ", " + u.word()).orElse("")).orElse("ignored");
  }

  Column as(Optional<Meaning> other, String because) {
    return new Column(index, header, samples, other, because, unit);
  }

  Column in(Optional<ListUnit> other) {
    return new Column(index, header, samples, meaning, why, other);
  }

  static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }

  /** The index of a letter; -1 if it is none. */
  static int indexOf(String letters) {
    if (!letters.matches("[A-Za-z]{1,3}")) {
      return -1;
    }
    int index = 0;
    for (char c : letters.toUpperCase(Locale.ROOT).toCharArray()) {
      index = index * 26 + c - 'A' + 1;
    }
    return index - 1;
  }
}
