package skidway.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import skidway.staging.StopButton;

/**
 * Turns the interrupt key into a press of the stop button: the search ends, the best plan found is
 * written, and only then the program goes, with the exit code it would have had.
 */
final class Interrupt {
  private static final long MOST_MINUTES = 10;

  private final StopButton stop = new StopButton();
  private final CountDownLatch finished = new CountDownLatch(1);
  private volatile int code = ExitCode.FAULT;

  StopButton stopButton() {
    return stop;
  }

  /** Starts listening. */
  void listen() {
    Runtime.getRuntime().addShutdownHook(new Thread(this::pressAndWait, "interrupt"));
  }

  /** Tells that everything is said and written. */
  void finished(int exitCode) {
    code = exitCode;
    finished.countDown();
  }

  private void pressAndWait() {
    if (finished.getCount() == 0 || !stop.armed()) {
      return;
    }
    stop.press();
    try {
      if (finished.await(MOST_MINUTES, TimeUnit.MINUTES)) {
        Runtime.getRuntime().halt(code);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
