package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import skidway.plan.Plan;
import skidway.plan.Reason;
import skidway.plan.Stack;

/** Advice about bearers stands in the row of the lift that lays them, and nowhere else. */
class BearerAdviceShownTest {
  private static final String ADVICE =
      "Bearers 0.45 m in from its ends instead of 0.30 m would bend the joists 12 % less.";
  private static final Stack STACK =
      SampleHouse.stacks().stream().filter(s -> s.bundleIds().size() > 1).findFirst().orElseThrow();

  private static Reason reason(String bundleId, String spotId) {
    List<String> sentences = List.of(spotId + ", tier 1: 8 pieces.", ADVICE);
    return new Reason(bundleId, spotId, 1, "", OptionalDouble.empty(), sentences);
  }

  /** What is said after the lift of a bundle. */
  private static List<String> rowsWithAdvice(Reason reason) throws Exception {
    Plan p = SampleHouse.plan();
    Plan plan =
        new Plan(
            p.jobName(),
            p.revision(),
            p.inputs(),
            p.previous(),
            p.search(),
            p.stacks(),
            p.waitingPlaces(),
            p.steps(),
            List.of(reason),
            p.unplaced(),
            p.effort(),
            p.baselines(),
            p.margins());
    String page = Packet.html(SampleHouse.task(), plan, "f", SampleAudit.nothing());
    return SvgText.elements(SvgText.parse(page.substring(page.indexOf("<html"))), "tr").stream()
        .filter(row -> row.getTextContent().contains(ADVICE))
        .peek(row -> assertThat(before(row)).contains(reason.bundleId(), "tier 1"))
        .map(Element::getTextContent)
        .toList();
  }

  private static String before(Element row) {
    return row.getPreviousSibling().getTextContent();
  }

  @Test
  void itStandsWhereTheLowestBundleIsLaid() throws Exception {
    String lowest = STACK.bundleIds().get(0);
    String code = STACK.spot().id();
    assertThat(rowsWithAdvice(reason(lowest, code)))
        .singleElement()
        .isEqualTo("To spare the joists under " + code + ": " + ADVICE);
  }

  @Test
  void itIsNotToldOfOtherTiersOrOtherSpots() throws Exception {
    assertThat(rowsWithAdvice(reason(STACK.bundleIds().get(1), STACK.spot().id()))).isEmpty();
    assertThat(rowsWithAdvice(reason(STACK.bundleIds().get(0), "elsewhere"))).isEmpty();
  }
}
