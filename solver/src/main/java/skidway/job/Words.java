package skidway.job;

import java.util.Locale;

/** Writes an enum's value as it stands in the files. */
final class Words {
  private Words() {}

  static String of(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
