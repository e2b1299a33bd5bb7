package skidway.job;

import java.nio.file.Path;
import java.util.Locale;

/** Says why a file was not written; nothing is left half done. */
public final class NotWritten extends RuntimeException {
  NotWritten(Path where, String found, String wayOut) {
    super(message(where, found, wayOut));
  }

  NotWritten(Path where, String found, String wayOut, Exception cause) {
    super(message(where, found, wayOut), cause);
  }

  private static String message(Path where, String found, String wayOut) {
    return String.format(
        Locale.ROOT, "%s: %s; nothing was written. Way out: %s.", where, found, wayOut);
  }
}
