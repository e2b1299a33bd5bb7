package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import skidway.audit.AuditReport;
import skidway.plan.Margin;
import skidway.plan.Task;
import skidway.rules.Rule;
import skidway.sheet.SampleAudit;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;
import skidway.units.Measure;

class AuditTextTest {
  private static final Task TASK = Tasks.task(SiteBuilder.aSite().build());
  private static final AuditReport REPORT = SampleAudit.report();

  private static List<Margin> of(List<Margin> margins, String stack) {
    return margins.stream().filter(m -> m.where().equals(stack)).toList();
  }

  @Test
  void aStacksTightestLimitsComeFirst() {
    List<Margin> tightest = StackMargins.tightest(REPORT.stackMargins());
    List<Margin> all = of(REPORT.stackMargins(), "D2");
    List<Margin> shown = of(tightest, "D2");
    assertThat(all).hasSizeGreaterThan(StackMargins.SHOWN);
    assertThat(shown).hasSize(StackMargins.SHOWN);
    assertThat(shown).isSortedAccordingTo((a, b) -> Double.compare(a.share(), b.share()));
    double loosest = shown.get(StackMargins.SHOWN - 1).share();
    assertThat(all)
        .filteredOn(m -> !shown.contains(m) && m.rule().measure() != Measure.LENGTH)
        .allMatch(m -> m.share() >= loosest);
    assertThat(tightest.stream().map(Margin::where).distinct())
        .containsExactlyElementsOf(
            REPORT.stackMargins().stream().map(Margin::where).distinct().toList());
  }

  @Test
  void stacksAreToldWithRuleFreeShareAndSource() {
    List<String> lines = AuditText.lines(TASK, REPORT, false);
    assertThat(lines)
        .contains("Stacks, tightest loads and heights")
        .doesNotContain("Pieces, by class");
    assertThat(lines)
        .anyMatch(l -> l.matches("D1 +zoneLoad +1\\.4 kPa +4\\.8 kPa +70 % +29 CFR 1926\\.250.*"));
    assertThat(lines).anyMatch(l -> l.matches("D1 +stackSlender .* from memory, confirm"));
    assertThat(lines).noneMatch(l -> l.matches("D1 +keepClear .*"));
  }

  @Test
  void allTellsEveryLimitAndClassOfPieces() {
    List<String> lines = AuditText.lines(TASK, REPORT, true);
    assertThat(lines).contains("Stacks, every limit", "Pieces, by class");
    assertThat(lines).anyMatch(l -> l.matches("D1 +keepClear +2\\.00 m +at least 0\\.60 m .*"));
    assertThat(lines).anyMatch(l -> l.matches("6x8, 16'-0\" +teamLift +61 kg +46 kg +-33 % .*"));
  }

  @Test
  void whatIsLeftToPeopleHasListsOfItsOwn() {
    assertThat(AuditText.openMatters(REPORT))
        .containsSubsequence(
            "For people to settle",
            "  The back door can be reached over the deck only.",
            "Not checked",
            "  slope of yard west; needs slope.")
        .anyMatch(l -> l.startsWith("  teamLift: 3 pieces 6x8"));
    assertThat(AuditText.openMatters(SampleAudit.nothing())).isEmpty();
  }

  @Test
  void csvTellsTheSame() {
    List<List<String>> rows = AuditCsv.lines(REPORT, true).stream().map(CsvLine::cells).toList();
    assertThat(rows).allMatch(row -> row.size() == 11);
    assertThat(rows)
        .filteredOn(row -> row.get(0).equals("stack"))
        .hasSameSizeAs(REPORT.stackMargins());
    assertThat(rows)
        .anyMatch(row -> row.subList(0, 3).equals(List.of("to settle", "6x8, 16'-0\"", "teamLift")))
        .anyMatch(row -> row.get(9).equals("Not checked: slope of yard west; needs slope."))
        .anyMatch(
            row ->
                row.subList(0, 9)
                    .equals(
                        List.of(
                            "stack",
                            "D1",
                            "keepClear",
                            "hard",
                            "2.0000",
                            "at least",
                            "0.6000",
                            "m",
                            "233.3333")));
    assertThat(AuditCsv.lines(REPORT, false))
        .hasSizeLessThan(rows.size())
        .noneMatch(l -> l.startsWith("pieces,"));
  }

  @Test
  void everyLimitSaysWhichWayItHolds() {
    Margin margin = new Margin(Rule.KEEP_CLEAR, "A1", 1, 2, true);
    assertThat(MarginTable.of(List.of(margin), TASK.figures()).lines().get(1))
        .contains("at least 2.00 m", "-50 %");
  }
}
