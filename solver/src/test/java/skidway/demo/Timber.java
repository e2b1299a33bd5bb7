package skidway.demo;

import java.util.Locale;

/** One cut timber and where it belongs; lengths in ticks. */
record Timber(String wall, int course, int position, int from, int length, int bottom, int height) {
  String mark() {
    return String.format(Locale.ROOT, "%s-%02d-%d", wall, course, position);
  }

  int to() {
    return from + length;
  }
}
