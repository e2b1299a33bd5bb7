package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import skidway.rules.Publication;
import skidway.rules.Rule;
import skidway.rules.Setting;

class RulesCommandTest {
  private static final Path HOUSE = DemoFolder.ALL.resolve("l-house");
  private static final String TABLE = Shell.run("rules").out();

  /** The text with all gaps and line ends made one blank. */
  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void theTableFitsAScreen() {
    assertThat(TABLE.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void everyRuleAndLimitIsThereWithItsSource() {
    String all = flat(TABLE);
    for (Rule rule : Rule.values()) {
      assertThat(all).contains(rule.sentence(), "Source: " + rule.source() + ".");
      String row = rule.id() + " " + rule.level().name().toLowerCase(Locale.ROOT) + " ";
      assertThat(all).contains(row);
      for (Setting setting : rule.settings()) {
        assertThat(all).contains(row + setting.key() + " ");
        assertThat(all).contains(setting.key() + ": " + setting.source() + ".");
      }
    }
    for (Setting setting : Setting.values()) {
      if (setting.publication() != Publication.NONE) {
        assertThat(all).contains(": " + setting.publication().edition() + ".");
      }
    }
    assertThat(all).contains("replace neither");
  }

  @Test
  void whatIsNotSureSaysSoInItsRow() {
    assertThat(TABLE)
        .containsPattern("heightToWidth +3.00 +3.00  from memory, confirm  none\n")
        .containsPattern("machineStandRoom +4'-11\" +4'-11\"  assumption +none\n")
        .containsPattern("openStrip +3'-0\" +3'-0\"  from a secondary +none\n +text, confirm\n")
        .containsPattern("deckEdgeSetback +10'-0\" +10'-0\"  seen in the source +OSHA\n");
  }

  @Test
  void aJobsOwnLimitsAreInForceWithTheirReason() {
    String house = Shell.run("rules", HOUSE.toString()).out();
    assertThat(house)
        .contains("Limits in force on House at Two Herons")
        .containsPattern("deckEdgeSetback +4'-0\" +10'-0\"");
    assertThat(flat(house)).contains("Changed: 4'-0\" instead of 10'-0\": guard barricade along");
  }

  @Test
  void csvHasARowForEachLimitOfEachRule() {
    List<String> lines = Shell.run("rules", HOUSE.toString(), "--csv").out().lines().toList();
    assertThat(lines.get(0))
        .isEqualTo("id,sentence,level,setting,in_force,default,unit,source,edition,flag,reason");
    int rows = Arrays.stream(Rule.values()).mapToInt(r -> Math.max(1, r.settings().size())).sum();
    assertThat(lines).hasSize(rows + 1).allSatisfy(l -> assertThat(CsvLine.cells(l)).hasSize(11));
    List<String> edge =
        lines.stream()
            .filter(l -> l.startsWith("deckEdge,"))
            .map(CsvLine::cells)
            .findFirst()
            .orElseThrow();
    assertThat(edge.subList(2, 7))
        .containsExactly("hard", "deckEdgeSetback", "1.2192", "3.0480", "m");
    assertThat(edge.get(7)).contains("29 CFR 1926.250(b)(1)");
    assertThat(edge.get(8)).isEqualTo(Publication.OSHA.edition());
    assertThat(edge.get(9)).isEqualTo("seen in the source");
    assertThat(edge.get(10)).startsWith("guard barricade");
  }

  @Test
  void htmlIsOnePage() {
    Shell shell = Shell.run("rules", HOUSE.toString(), "--html");
    assertThat(shell.code()).isEqualTo(ExitCode.FINE);
    assertThat(shell.out()).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
    assertThat(shell.out()).contains("Limits in force on House at Two Herons");
  }

  @Test
  void oneFormAtATime() {
    Shell shell = Shell.run("rules", "--csv", "--html");
    assertThat(shell.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(shell.out()).isEmpty();
  }
}
