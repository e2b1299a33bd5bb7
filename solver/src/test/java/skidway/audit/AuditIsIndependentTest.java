package skidway.audit;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;
import skidway.plan.Presence;

final class AuditIsIndependentTest {
  private final JavaClasses audit =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("skidway.audit");

  @Test
  void theAuditUsesTheModelTheRulesThePlanAndNothingElse() {
    classes()
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "java..",
            "org.jspecify..",
            "skidway.units",
            "skidway.site",
            "skidway.timber",
            "skidway.erection",
            "skidway.rules",
            "skidway.plan",
            "skidway.audit..")
        .check(audit);
  }

  @Test
  void theAuditLivesThroughTheJobByItself() {
    noClasses().should().dependOnClassesThat().areAssignableTo(Presence.class).check(audit);
  }
}
