package skidway.paper;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Paper knows pages only, and it alone knows the libraries that make PDFs. */
class PaperArrowsTest {
  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("skidway");

  @Test
  void paperKnowsNothingOfJobs() {
    noClasses()
        .that()
        .resideInAPackage("skidway.paper..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("skidway.sheet..", "skidway.cli..", "skidway.plan..", "skidway.job..")
        .check(MAIN);
  }

  @Test
  void paperAloneKnowsTheLibraries() {
    noClasses()
        .that()
        .resideOutsideOfPackage("skidway.paper..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.openhtmltopdf..", "org.apache.pdfbox..", "org.apache.fontbox..")
        .check(MAIN);
  }

  @Test
  void sheetsDoNotKnowPaper() {
    noClasses()
        .that()
        .resideInAPackage("skidway.sheet..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("skidway.paper..", "skidway.cli..")
        .check(MAIN);
  }
}
