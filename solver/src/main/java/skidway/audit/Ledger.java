package skidway.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import skidway.plan.Margin;
import skidway.rules.Rule;
import skidway.units.Figures;
import skidway.units.Measure;

/**
 * Takes down what is measured: keeps what is broken as findings and, for each rule, the tightest
 * place. A length may miss its limit by {@link #LENGTH_TOLERANCE_M}, so that things may touch;
 * anything else by a millionth, for the sake of rounding. What is so at several moments is told of
 * the first.
 */
final class Ledger {
  static final double LENGTH_TOLERANCE_M = 0.001;
  private static final double ROUNDING = 1e-6;

  private final Figures figures;
  private final List<Finding> findings = new ArrayList<>();
  private final Set<Finding> toldAlready = new HashSet<>();
  private final Map<Rule, Margin> tightest = new EnumMap<>(Rule.class);
  private final Map<Rule, Map<String, Margin>> tightestByPlace = new EnumMap<>(Rule.class);
  private String when = "";

  Ledger(Figures figures) {
    this.figures = figures;
  }

  /** Words that end the sentences about what is measured from now on; empty if it is always so. */
  void during(String words) {
    when = words;
  }

  /** A value that must not be above its limit; the sentence gets the value's figure. */
  void most(Rule rule, String where, double value, double limit, UnaryOperator<String> sentence) {
    take(new Margin(rule, where, value, limit, false), sentence);
  }

  /** A value that must not be below its limit; the sentence gets the value's figure. */
  void least(Rule rule, String where, double value, double limit, UnaryOperator<String> sentence) {
    take(new Margin(rule, where, value, limit, true), sentence);
  }

  /** A signed distance that must not be negative; the sentence gets the overlap's figure. */
  void apart(Rule rule, String where, double separation, UnaryOperator<String> sentence) {
    keepTightest(new Margin(rule, where, separation, 0, true));
    if (!(separation >= -tolerance(rule, 0))) {
      broken(rule, where, separation, 0, sentence.apply(figures.of(rule.measure(), -separation)));
    }
  }

  /** Something that is plainly wrong. */
  void broken(Rule rule, String where, double value, double limit, String sentence) {
    if (toldAlready.add(new Finding(rule, where, value, limit, sentence))) {
      findings.add(new Finding(rule, where, value, limit, sentence + when));
    }
  }

  private void take(Margin margin, UnaryOperator<String> sentence) {
    keepTightest(margin);
    // Turned round so that a value that is no number counts as broken.
    if (!(slack(margin) >= -tolerance(margin.rule(), margin.limit()))) {
      Measure measure = margin.rule().measure();
      String value = figures.of(measure, margin.value());
      String limit = figures.of(measure, margin.limit());
      String same = value.equals(limit) ? " (they differ by less than is shown)" : "";
      broken(
          margin.rule(),
          margin.where(),
          margin.value(),
          margin.limit(),
          sentence.apply(value) + ", limit " + limit + same + ".");
    }
  }

  private void keepTightest(Margin margin) {
    if (!Double.isFinite(margin.value()) || !Double.isFinite(margin.limit())) {
      return;
    }
    tightest.merge(margin.rule(), margin, Ledger::tighter);
    tightestByPlace
        .computeIfAbsent(margin.rule(), r -> new LinkedHashMap<>())
        .merge(margin.where(), margin, Ledger::tighter);
  }

  /** Of two margins of one rule the tighter, of equals the first. */
  static Margin tighter(Margin first, Margin second) {
    return tightness(second) < tightness(first) ? second : first;
  }

  /** Lengths compare by what is left in metres, anything else by the share that is left. */
  private static double tightness(Margin margin) {
    return margin.rule().measure() == Measure.LENGTH ? slack(margin) : margin.share();
  }

  private static double slack(Margin margin) {
    return margin.atLeast() ? margin.value() - margin.limit() : margin.limit() - margin.value();
  }

  private static double tolerance(Rule rule, double limit) {
    return rule.measure() == Measure.LENGTH
        ? LENGTH_TOLERANCE_M + 1e-9
        : ROUNDING * Math.max(1, Math.abs(limit));
  }

  List<Finding> findings() {
    return findings.stream()
        .sorted(
            Comparator.comparing(Finding::rule)
                .thenComparing(Finding::where, new PlaceOrder())
                .thenComparing(Finding::sentence))
        .toList();
  }

  List<Margin> margins() {
    return List.copyOf(tightest.values());
  }

  /** The tightest of each rule at each place, in the order of the rules. */
  List<Margin> marginsByPlace() {
    return tightestByPlace.values().stream().flatMap(places -> places.values().stream()).toList();
  }
}
