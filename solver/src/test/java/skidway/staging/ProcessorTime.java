package skidway.staging;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;

/** Processor time of this whole process, so that runs can be compared on a machine that is busy. */
public final class ProcessorTime {
  private static final OperatingSystemMXBean SYSTEM =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

  private ProcessorTime() {}

  public static double nowS() {
    return SYSTEM.getProcessCpuTime() / 1e9;
  }

  /**
   * Calls for a stop after so much processor time.
   *
   * @return switches it off
   */
  static Runnable stopAfter(double processorS, Runnable stop) {
    double endS = nowS() + processorS;
    Thread thread =
        new Thread(
            () -> {
              try {
                while (nowS() < endS) {
                  Thread.sleep(20);
                }
                stop.run();
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            });
    thread.setDaemon(true);
    thread.start();
    return thread::interrupt;
  }
}
