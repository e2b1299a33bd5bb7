package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import skidway.audit.AuditReport;
import skidway.plan.Effort;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.site.Spot;

class PlacardTest {
  private static final Task TASK = SampleHouse.task();
  private static final Plan PLAN = SampleHouse.plan();

  private static AuditReport stacks(Margin... margins) {
    return new AuditReport(
        List.of(), List.of(), List.of(), Effort.NONE, List.of(margins), List.of(), List.of());
  }

  private static Plan withoutStacks(Plan p) {
    return new Plan(
        p.jobName(),
        p.revision(),
        p.inputs(),
        p.previous(),
        p.search(),
        List.of(),
        p.waitingPlaces(),
        p.steps(),
        p.reasons(),
        p.unplaced(),
        p.effort(),
        p.baselines(),
        p.margins());
  }

  private static List<String> placards(AuditReport audit) throws Exception {
    String page = Packet.html(TASK, PLAN, "f", audit);
    Document document = SvgText.parse(page.substring(page.indexOf("<html")));
    return SvgText.elements(document, "article").stream()
        .filter(article -> article.getAttribute("class").contains("placard"))
        .map(Element::getTextContent)
        .toList();
  }

  @Test
  void everyZoneHasOne() throws Exception {
    assertThat(Placard.of(TASK, PLAN, SampleAudit.report()))
        .extracting(p -> p.zone().id())
        .containsExactly("deck", "yard south", "yard west");
    assertThat(placards(SampleAudit.report())).hasSize(3);
  }

  @Test
  void whatOnlyWaitsCountsToo() {
    Spot waiting = PLAN.waitingPlaces().get(0);
    double waitingKg =
        PLAN.steps().stream()
            .filter(step -> step.kind() == StepKind.SET_DOWN)
            .map(Step::bundleId)
            .distinct()
            .mapToDouble(id -> TASK.delivery().bundle(id).orElseThrow().mass().highKg())
            .sum();
    List<Placard> placards = Placard.of(TASK, withoutStacks(PLAN), SampleAudit.nothing());
    Placard placard =
        placards.stream()
            .filter(p -> p.zone().id().equals(waiting.zoneId()))
            .findFirst()
            .orElseThrow();
    assertThat(placard.stacks()).isZero();
    assertThat(placard.waits()).isTrue();
    assertThat(waitingKg).isPositive();
    assertThat(placard.massKg()).isCloseTo(waitingKg, within(1e-6));
    assertThat(placards.get(0).waits()).isFalse();
    assertThat(placards.get(0).massKg()).isZero();
  }

  @Test
  void theWorstStackOfTheZoneIsNamed() throws Exception {
    // D4 presses with 0.75 of 4.79 kPa; the report's own tightest is D2 with 4.1 kPa.
    assertThat(placards(SampleAudit.report()).get(0))
        .contains("Allowed on this floor100 psfposted allowance")
        .contains("Planned at most86 psf86 % of it, at D2")
        .contains("13,827 lb of 19,842 lb")
        .contains("71 % of what they may bear, at D4", "55 % of what they may bear, at D4")
        .contains("does not replace the designer of the floor");
    assertThat(placards(SampleAudit.report()).get(1))
        .contains("Allowed under bearers1,500 psfsandy gravel", "at A5", "no total given")
        .contains("does not replace the person responsible for the ground")
        .doesNotContain("Joists");
    assertThat(placards(SampleAudit.report()).get(2)).contains("soil not stated", "at R1");
  }

  @Test
  void aLoadAtItsLimitIsFineAndAboveItIsTooMuch() throws Exception {
    Margin atLimit = new Margin(Rule.ZONE_LOAD, "D1", 4.79, 4.79, false);
    assertThat(placards(stacks(atLimit)).get(0)).contains("100 % of it, at D1");
    Margin above = new Margin(Rule.ZONE_LOAD, "D1", 4.80, 4.79, false);
    assertThat(placards(stacks(above)).get(0)).contains("too much, at D1");
  }

  @Test
  void aBundleThatWaitsMayPressHarderThanAnyStack() throws Exception {
    Spot waiting = PLAN.waitingPlaces().get(0);
    int zone = TASK.site().zones().indexOf(TASK.site().zone(waiting.zoneId()).orElseThrow());
    String stack =
        PLAN.stacks().stream()
            .map(s -> s.spot())
            .filter(s -> s.zoneId().equals(waiting.zoneId()))
            .findFirst()
            .orElseThrow()
            .id();
    Rule rule = Placard.loadRule(TASK.site().zones().get(zone));
    Margin lying = new Margin(rule, stack, 40, 71.8, false);
    Margin less = new Margin(rule, waiting.id(), 39, 71.8, false);
    assertThat(placards(stacks(lying, less)).get(zone)).contains("of it, at " + stack);
    Margin more = new Margin(rule, waiting.id(), 41, 71.8, false);
    assertThat(placards(stacks(lying, more)).get(zone))
        .contains("58 % of it, at waiting place " + waiting.id() + ", for a while");
    Margin broken = new Margin(rule, waiting.id(), 72, 71.8, false);
    assertThat(placards(stacks(lying, broken)).get(zone))
        .contains("too much, at waiting place " + waiting.id());
  }

  @Test
  void whatNobodyCheckedIsNotSaidToBeFine() throws Exception {
    String deck = placards(SampleAudit.nothing()).get(0);
    assertThat(deck).contains("Planned at mostnot checked", "none loaded");
  }

  @Test
  void jointsWithoutAFigureAreNotMixedUpBetweenZones() {
    Zones zones = new Zones(List.of("deck", "deck east"), Map.of("D1", "deck", "E1", "deck east"));
    Margin west = new Margin(Rule.JOIST_BENDING, "deck, joist 3", 1, 2, false);
    Margin east = new Margin(Rule.JOIST_BENDING, "deck east, joist 1", 1, 2, false);
    Margin spot = new Margin(Rule.ZONE_LOAD, "E1", 1, 2, false);
    Margin other = new Margin(Rule.ZONE_LOAD, "decking", 1, 2, false);
    List<Margin> all = List.of(west, east, spot, other);
    assertThat(zones.about("deck", all)).containsExactly(west);
    assertThat(zones.about("deck east", all)).containsExactly(east, spot);
  }
}
