package skidway.sheet;

import java.util.Locale;
import skidway.timber.Load;

/** Names a load in running text, without saying "load" twice. */
final class LoadNames {
  private static final String WORD = "load";

  private LoadNames() {}

  static String of(Load load) {
    return of(load.id());
  }

  static String of(String loadId) {
    return loadId.toLowerCase(Locale.ROOT).startsWith(WORD) ? loadId : WORD + " " + loadId;
  }
}
