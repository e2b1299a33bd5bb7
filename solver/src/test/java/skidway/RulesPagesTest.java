package skidway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import skidway.rules.Level;
import skidway.rules.Publication;
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

  /** How a rule's source names a publication. */
  private static final Map<Publication, String> NAMED =
      Map.of(
          Publication.OSHA, "29 CFR",
          Publication.OSHA_LETTER, "a letter",
          Publication.NIOSH, "NIOSH 94-110",
          Publication.HSE_L23, "L23",
          Publication.IBC, "IBC 2012");

  @Test
  void rulesPageListsEveryRule() throws IOException {
    StringBuilder page = new StringBuilder();
    page.append("# Rules\n\n");
    page.append(
        "Every rule a plan is held to, in the order of `skidway.rules.Rule`. The id finds a\n");
    page.append("rule everywhere: in the code, in tests, in the audit's report, in a plan file.\n");
    page.append(
        "Limits are settings; their defaults and sources are in [SOURCES.md](SOURCES.md).\n\n");
    page.append("| id | level | rule | source | edition | settings |\n");
    page.append("|---|---|---|---|---|---|\n");
    for (Rule rule : Rule.values()) {
      String settings =
          rule.settings().stream().map(s -> "`" + s.key() + "`").collect(Collectors.joining(", "));
      page.append(
          row(
              "`" + rule.id() + "`",
              rule.level().name().toLowerCase(Locale.ROOT),
              rule.sentence(),
              rule.source(),
              editions(rule),
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
    page.append("rules and flags use only with a reason when it becomes weaker.\n\n");
    page.append(
        "| key | default | US | flag | published limit | weaker when | source | edition |\n");
    page.append("|---|---|---|---|---|---|---|---|\n");
    for (Setting setting : Setting.values()) {
      page.append(
          row(
              "`" + setting.key() + "`",
              METRIC.of(setting.measure(), setting.defaultSi()),
              US.of(setting.measure(), setting.defaultSi()),
              setting.flag().words(),
              setting.published() ? "yes" : "",
              setting.weaker().words(),
              setting.source(),
              edition(setting.publication())));
    }
    page.append(LimitTables.ground()).append(LimitTables.joists());
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
    assertThat(setting.key()).matches("[a-z][A-Za-z0-9]+");
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void whatGuardsPeopleHasAWeakerSide(Setting setting) {
    boolean guards =
        Arrays.stream(Rule.values())
            .filter(r -> r.level() == Level.HARD || r.level() == Level.NOTE)
            .anyMatch(r -> r.settings().contains(setting));
    assertThat(setting.weaker() != Weaker.NEITHER).isEqualTo(guards);
    assertThat(guards || !setting.published()).isTrue();
  }

  /** The publications that a rule or its settings come from, each once. */
  private static String editions(Rule rule) {
    return Arrays.stream(Publication.values())
        .filter(
            p ->
                rule.source().contains(NAMED.getOrDefault(p, "nowhere"))
                    || rule.settings().stream().anyMatch(s -> s.publication() == p))
        .map(RulesPagesTest::edition)
        .filter(e -> !e.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private static String edition(Publication publication) {
    return publication == Publication.NONE ? "" : publication.edition();
  }

  static String row(String... cells) {
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
