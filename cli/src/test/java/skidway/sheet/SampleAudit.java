package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import skidway.audit.AuditReport;
import skidway.audit.Finding;
import skidway.plan.Effort;
import skidway.plan.Margin;
import skidway.rules.Rule;

/** What an audit might say of the made-up house: each stack's limits, notes and what is missing. */
public final class SampleAudit {
  private SampleAudit() {}

  /** A report without anything in it. */
  public static AuditReport nothing() {
    return new AuditReport(
        List.of(), List.of(), List.of(), Effort.NONE, List.of(), List.of(), List.of());
  }

  static AuditReport broken(String sentence) {
    return new AuditReport(
        List.of(new Finding(Rule.KEEP_CLEAR, "A1", 0, 1, sentence)),
        List.of(),
        List.of(),
        Effort.NONE,
        List.of(),
        List.of(),
        List.of());
  }

  public static AuditReport report() {
    return new AuditReport(
        List.of(),
        SampleHouse.plan().margins(),
        List.of(
            "Not checked: slope of yard west; needs slope.",
            "The back door can be reached over the deck only."),
        SampleHouse.plan().effort(),
        stackMargins(),
        List.of(
            new Margin(Rule.TEAM_LIFT, "6x8, 16'-0\"", 61, 46, false),
            new Margin(Rule.LIFT_INDEX, "6x8, 4'-0\"", 0.8, 1, false)),
        List.of(
            new Finding(
                Rule.TEAM_LIFT,
                "6x8, 16'-0\"",
                61,
                46,
                "3 pieces 6x8, 16'-0\" weigh up to 134 lb, more than 4 people lift: use the machine.")));
  }

  private static List<Margin> stackMargins() {
    List<Margin> margins = new ArrayList<>();
    double share = 0.30;
    for (var stack : SampleHouse.stacks()) {
      String code = stack.spot().id();
      boolean deck = stack.spot().zoneId().equals("deck");
      margins.add(new Margin(Rule.STACK_HEIGHT, code, 1.1 + share / 10, 1.524, false));
      margins.add(new Margin(Rule.STACK_SLENDER, code, 1.6, 3, false));
      double allowedKpa = deck ? 4.79 : 71.8;
      Rule load = deck ? Rule.ZONE_LOAD : Rule.GROUND_PRESSURE;
      margins.add(new Margin(load, code, share * allowedKpa, allowedKpa, false));
      if (deck) {
        margins.add(new Margin(Rule.JOIST_BENDING, code, share * 3000, 3200, false));
        margins.add(new Margin(Rule.JOIST_SHEAR, code, share * 3000, 4100, false));
      }
      margins.add(new Margin(Rule.KEEP_CLEAR, code, 2, 0.6, true));
      share += deck ? 0.15 : 0.01;
    }
    return margins;
  }
}
