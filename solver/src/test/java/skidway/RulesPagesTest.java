package skidway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import skidway.rules.Level;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.rules.Weaker;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/**
 * Keeps RULES.md and SOURCES.md true: both are written from the lists in the code. After a change
 * run with {@code -Dskidway.update=true} and read the difference.
 */
class RulesPagesTest {
  private static final Figures METRIC = new Figures(UnitSystem.METRIC);
  private static final Figures US = new Figures(UnitSystem.US);

  @Test
  void rulesPageListsEveryRule() throws IOException {
    StringBuilder page = new StringBuilder();
    page.append("# Rules\n\n");
    page.append(
        "Every rule a plan is held to, in the order of `skidway.rules.Rule`. The id finds a\n");
    page.append("rule everywhere: in the code, in tests, in the audit's report, in a plan file.\n");
    page.append(
        "Limits are settings; their defaults and sources are in [SOURCES.md](SOURCES.md).\n\n");
    page.append("| id | level | rule | source | settings |\n");
    page.append("|---|---|---|---|---|\n");
    for (Rule rule : Rule.values()) {
      String settings =
          rule.settings().stream().map(s -> "`" + s.key() + "`").collect(Collectors.joining(", "));
      page.append(
          row(
              "`" + rule.id() + "`",
              rule.level().name().toLowerCase(Locale.ROOT),
              rule.sentence(),
              rule.source(),
              settings));
    }
    check(Path.of("RULES.md"), page.toString());
  }

  @Test
  void sourcesPageListsEverySetting() throws IOException {
    StringBuilder page = new StringBuilder();
    page.append("# Sources\n\n");
    page.append(
        "Where the numbers come from. A figure marked *common practice* or *assumption* has no\n");
    page.append(
        "published source; replace it with what is true on your site. Figures here help to\n");
    page.append(
        "plan and replace neither local codes, nor the machine's own chart, nor the designer\n");
    page.append(
        "of a floor, nor licensed practice. Check the edition in force before you rely on one.\n\n");
    page.append("## Settings\n\n");
    page.append(
        "`job.json` may change any of them; a published limit only with a reason, and what hard\n");
    page.append("rules use only with a reason when it becomes weaker.\n\n");
    page.append("| key | default | US | flag | published limit | weaker when | source |\n");
    page.append("|---|---|---|---|---|---|---|\n");
    for (Setting setting : Setting.values()) {
      page.append(
          row(
              "`" + setting.key() + "`",
              METRIC.of(setting.measure(), setting.defaultSi()),
              US.of(setting.measure(), setting.defaultSi()),
              setting.flag().words(),
              setting.published() ? "yes" : "",
              setting.weaker().words(),
              setting.source()));
    }
    page.append(
        """

        ## Wood

        Formulas: Wood Handbook, FPL-GTR-282 (2021), ch. 4, Eq 4-3 and 4-9 to 4-14. Species values with
        their own source and flag each: `src/main/resources/skidway/timber/species.csv`. Tests recompute
        handbook cells and compare with published shipping weights (Oregon State University,
        owic.oregonstate.edu).

        ## Stacking

        Published instances of the parallel stack loading problem: see
        `src/test/resources/skidway/staging/pslp/SOURCE.txt`.

        ## Machines

        Load charts are read as printed, the row of the next larger reach rules: BC Crane Safety, load
        charts (bccranesafety.ca).
        """);
    check(Path.of("SOURCES.md"), page.toString());
  }

  @ParameterizedTest
  @EnumSource(Rule.class)
  void aRulesIdIsItsName(Rule rule) {
    String camel =
        Arrays.stream(rule.name().toLowerCase(Locale.ROOT).split("_"))
            .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
            .collect(Collectors.joining());
    assertThat(rule.id())
        .isEqualTo(camel.substring(0, 1).toLowerCase(Locale.ROOT) + camel.substring(1));
    assertThat(rule.sentence()).endsWith(".");
    assertThat(rule.source()).isNotBlank();
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void everySettingSaysWhereItComesFrom(Setting setting) {
    assertThat(setting.source()).isNotBlank();
    assertThat(setting.key()).matches("[a-z][A-Za-z]+");
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void whatHardRulesUseHasAWeakerSide(Setting setting) {
    boolean guards =
        Arrays.stream(Rule.values())
            .anyMatch(r -> r.level() == Level.HARD && r.settings().contains(setting));
    assertThat(setting.weaker() != Weaker.NEITHER).isEqualTo(guards);
    assertThat(guards || !setting.published()).isTrue();
  }

  private static String row(String... cells) {
    return Arrays.stream(cells)
        .map(cell -> cell.replace("|", "\\|"))
        .collect(Collectors.joining(" | ", "| ", " |\n"));
  }

  private static void check(Path file, String expected) throws IOException {
    if (Boolean.getBoolean("skidway.update")) {
      Files.writeString(file, expected);
    }
    assertThat(file).as("run with -Dskidway.update=true to write it").exists();
    assertThat(Files.readString(file)).isEqualTo(expected);
  }
}
