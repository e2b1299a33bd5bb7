package skidway.sheet;

import java.util.Locale;
import java.util.stream.Collectors;
import skidway.plan.Margin;
import skidway.rules.Rule;
import skidway.units.Figures;

/** Says how near something comes to a limit, in the same words on the screen and on paper. */
public record MarginWords(Margin margin, Figures figures) {
  /** What the plan has. */
  public String value() {
    return figures.of(margin.rule().measure(), margin.value());
  }

  /** What is allowed; whether at least or at most is for {@link Margin#atLeast} to say. */
  public String limit() {
    return figures.of(margin.rule().measure(), margin.limit());
  }

  /** Percent of the limit still free, rounded down; a dash where the limit is nothing. */
  public String free() {
    if (margin.limit() == 0) {
      return "-";
    }
    return String.format(Locale.ROOT, "%.0f %%", Math.floor(100 * margin.share() + 1e-6) + 0.0);
  }

  /** Percent of the limit that is taken, rounded up. */
  String taken() {
    return String.format(
        Locale.ROOT, "%.0f %%", Math.ceil(100 * (1 - margin.share()) - 1e-6) + 0.0);
  }

  /** Whether it is broken by more than rounding. */
  boolean broken() {
    return margin.share() < -1e-6;
  }

  /** The rule's own source, then those of the numbers in it. */
  static String source(Rule rule) {
    String numbers =
        rule.settings().stream()
            .map(s -> s.key() + ": " + s.flag().words() + ", " + s.source())
            .collect(Collectors.joining("; "));
    return numbers.isEmpty() ? rule.source() : rule.source() + ". " + numbers;
  }
}
