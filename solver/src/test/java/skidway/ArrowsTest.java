package skidway;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the arrows between packages: each may look only at those before it in the story. */
class ArrowsTest {
  private static final List<String> STORY =
      List.of(
          "units",
          "site",
          "timber",
          "erection",
          "geometry",
          "limits",
          "rules",
          "layout",
          "plan",
          "progress",
          "bound",
          "staging",
          "shakeout",
          "audit",
          "job",
          "survey",
          "intake");

  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("skidway");

  static Stream<String> story() {
    return STORY.stream();
  }

  @ParameterizedTest
  @MethodSource("story")
  void packagesLookOnlyAtThoseBeforeThem(String name) {
    String[] later =
        STORY.subList(STORY.indexOf(name) + 1, STORY.size()).stream()
            .map(p -> "skidway." + p + "..")
            .toArray(String[]::new);
    if (later.length > 0) {
      noClasses()
          .that()
          .resideInAPackage("skidway." + name + "..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(later)
          .check(MAIN);
    }
  }

  @Test
  void theAuditSharesNoCodeWithWhatItJudges() {
    noClasses()
        .that()
        .resideInAPackage("skidway.audit..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "skidway.geometry..",
            "skidway.limits..",
            "skidway.layout..",
            "skidway.staging..",
            "skidway.shakeout..")
        .check(MAIN);
  }

  @ParameterizedTest
  @CsvSource({
    "org.locationtech.., geometry",
    "org.jgrapht.., geometry",
    "com.fasterxml.., job",
    "org.dhatim.., intake",
    "org.apache.commons.compress.., intake",
    "org.optaplanner.., staging"
  })
  void aLibraryIsUsedInOnePlaceOnly(String library, String home) {
    noClasses()
        .that()
        .resideOutsideOfPackage("skidway." + home + "..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(MAIN);
  }

  @Test
  void theLibraryNeitherPrintsNorEndsTheProgram() {
    noClasses()
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .check(MAIN);
  }
}
