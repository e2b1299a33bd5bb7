package skidway.sheet;

import java.util.List;
import java.util.Locale;
import skidway.plan.Plan;
import skidway.plan.Proof;

/** Says in words how near a plan is to the best possible. */
public final class ProofWords {
  private static final double TENTHS_OF_PERCENT = 1000;

  private ProofWords() {}

  /** What the brief words are about. */
  static String name(Proof proof) {
    return proof.isBest() ? "crew time" : "above the best possible";
  }

  static String brief(Proof proof) {
    return proof.isBest() ? "proven best" : "at most " + percent(proof);
  }

  /** One or two sentences; none if nothing is proven. */
  public static List<String> sentences(Plan plan) {
    return plan.proof().map(proof -> sentences(plan, proof)).orElse(List.of());
  }

  private static List<String> sentences(Plan plan, Proof proof) {
    String of =
        plan.unplaced().isEmpty()
            ? ""
            : ", of all plans that leave out no more bundles than it does";
    String drives =
        proof.ignored().contains(Proof.Ignored.DRIVES)
            ? ", not counting " + Proof.Ignored.DRIVES.words()
            : "";
    if (proof.isBest()) {
      return List.of("Proven best: no plan takes fewer crew hours" + of + drives + ".");
    }
    List<Proof.Ignored> rules =
        proof.ignored().stream().filter(i -> i != Proof.Ignored.DRIVES).toList();
    return List.of(
        "At most " + percent(proof) + " above the best possible (proven)" + of + drives + ".",
        rules.isEmpty()
            ? "It may be less."
            : "It may be less: the proof does not heed " + list(rules) + ".");
  }

  /** Rounded up, so that nothing is said that is not proven. */
  private static String percent(Proof proof) {
    double tenths = Math.ceil(proof.share() * TENTHS_OF_PERCENT);
    return String.format(Locale.ROOT, "%.1f %%", Math.max(1, tenths) / 10);
  }

  private static String list(List<Proof.Ignored> ignored) {
    List<String> words = ignored.stream().map(Proof.Ignored::words).toList();
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}
