package skidway.cli;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** Work that goes on beside the command's own, on a thread of its own. */
final class Aside<T> {
  private final FutureTask<T> work;

  private Aside(FutureTask<T> work) {
    this.work = work;
  }

  /**
   * Begins some.
   *
   * @param what it makes, for whoever looks at the threads
   */
  static <T> Aside<T> begin(String what, Supplier<T> work) {
    FutureTask<T> task = new FutureTask<>(work::get);
    Thread thread = new Thread(task, what);
    thread.setDaemon(true);
    thread.start();
    return new Aside<>(task);
  }

  /** What it has made, waited for if need be; what went wrong there goes wrong here. */
  T done() {
    try {
      return work.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw e.getCause() instanceof RuntimeException fault ? fault : new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted while waiting.", e);
    }
  }
}
