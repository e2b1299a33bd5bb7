package skidway.plan;

import java.util.List;
import java.util.Optional;
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

  /**
   * The sentence that tells how bearers laid otherwise would bend joists less; only of a bundle
   * that lies lowest on a deck, and only where there is anything to gain.
   */
  public Optional<String> bearerAdvice() {
    return sentences.stream()
        .filter(s -> s.startsWith("Bearers ") || s.startsWith("Its bearers "))
        .findFirst();
  }
}
