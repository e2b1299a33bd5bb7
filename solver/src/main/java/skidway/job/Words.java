package skidway.job;

import java.util.Locale;

/** Writes an enum's value as it stands in the files, and nouns in messages. */
final class Words {
  private Words() {}

  /** A noun with its article. */
  static String a(String noun) {
    boolean vowel = !noun.isEmpty() && "aeiou".indexOf(noun.charAt(0)) >= 0;
    return (vowel ? "an " : "a ") + noun;
  }

  static String of(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
