package skidway.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/**
 * Where the commands speak: results go to standard output, talk and progress to standard error.
 *
 * @param live whether a person watches, so that a line may be written over
 */
record Screen(PrintWriter results, PrintWriter talk, boolean live) {

  void result(String format, Object... values) {
    results.println(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
  }

  void results(List<String> lines) {
    lines.forEach(results::println);
  }

  /** Results so far come first: otherwise talk would stand in the middle of one of their lines. */
  void say(String format, Object... values) {
    results.flush();
    talk.println(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
    talk.flush();
  }

  /** Figures on the screen can be relied on by somebody; this says what they do not replace. */
  void caution() {
    result("");
    result("Figures help to plan; they replace neither the machine's own chart, nor the floor");
    result("designer's allowance, nor local codes and licensed practice. Keep clear of lifts.");
  }
}
