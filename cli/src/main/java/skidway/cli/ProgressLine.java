package skidway.cli;

import java.util.Locale;
import skidway.staging.Watcher;
import skidway.units.Figures;

/** One line that shows the best plan so far; written over while a person watches. */
final class ProgressLine implements Watcher {
  private static final long NANOS_BETWEEN = 200_000_000;
  private static final long NANOS_BETWEEN_UNWATCHED = 2_000_000_000;

  private final Screen screen;
  private final Figures figures;
  private long last = System.nanoTime();
  private boolean open;

  ProgressLine(Screen screen, Figures figures) {
    this.screen = screen;
    this.figures = figures;
  }

  @Override
  public void better(int placed, int delivered, double personS) {
    long now = System.nanoTime();
    if (now - last < (screen.live() ? NANOS_BETWEEN : NANOS_BETWEEN_UNWATCHED)) {
      return;
    }
    last = now;
    String text =
        String.format(
            Locale.ROOT,
            "  searching: %d of %d bundles placed, best %s",
            placed,
            delivered,
            figures.hours(personS));
    if (screen.live()) {
      screen.talk().print("\r" + text + "   ");
      screen.talk().flush();
      open = true;
    } else {
      screen.say("%s", text);
    }
  }

  void end() {
    if (open) {
      screen.talk().println();
      screen.talk().flush();
      open = false;
    }
  }
}
