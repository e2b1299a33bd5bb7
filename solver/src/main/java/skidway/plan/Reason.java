package skidway.plan;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Why a bundle lies where it lies.
 *
 * @param costPersonS what the bundle costs there
 * @param nextBestSpotId the next best spot for it with all else as planned, or an empty text
 * @param nextBestPersonS what the plan would cost more with the bundle there
 * @param sentences the same, to be read
 */
public record Reason(
    String bundleId,
    String spotId,
    double costPersonS,
    String nextBestSpotId,
    OptionalDouble nextBestPersonS,
    List<String> sentences) {
  public Reason {
    sentences = List.copyOf(sentences);
  }
}
