package skidway.job;

import java.nio.file.Path;
import skidway.plan.Plan;

/**
 * Names one plan beyond doubt.
 *
 * @param fingerprint SHA-256 of its file, in hexadecimal
 */
public record PlanMark(int revision, String fingerprint) {
  /**
   * The mark of a plan that was read from a file.
   *
   * @throws BadInput if the file cannot be read
   */
  public static PlanMark of(Plan plan, Path file) {
    return new PlanMark(plan.revision(), PlanFiles.fingerprint(file));
  }

  /** As much of a fingerprint as people compare. */
  static String brief(String fingerprint) {
    return "fingerprint "
        + (fingerprint.isEmpty()
            ? "missing"
            : Quote.shortened(fingerprint.substring(0, Math.min(12, fingerprint.length()))));
  }
}
