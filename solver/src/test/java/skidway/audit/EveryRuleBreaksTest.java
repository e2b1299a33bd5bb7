package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import skidway.rules.Level;
import skidway.rules.Rule;

final class EveryRuleBreaksTest {
  static Stream<Rule> mustHold() {
    return Arrays.stream(Rule.values())
        .filter(rule -> rule.level() == Level.HARD || rule.level() == Level.MEDIUM);
  }

  @Test
  void theCatalogueHasAPlanForEveryHardAndMediumRule() {
    assertThat(BrokenPlans.all()).containsOnlyKeys(mustHold().toArray(Rule[]::new));
  }

  @ParameterizedTest
  @MethodSource("mustHold")
  void aPlanThatBreaksOneRuleIsCaughtForThisRuleAlone(Rule rule) {
    BrokenPlans.Case broken = BrokenPlans.all().get(rule);
    AuditReport report = Audited.report(broken.task(), broken.plan());
    assertThat(report.clean()).isFalse();
    assertThat(report.findings()).extracting(Finding::rule).containsOnly(rule);
    assertThat(report.findings()).allSatisfy(f -> assertThat(f.sentence()).endsWith("."));
  }
}
