package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.plan.Effort;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.site.Spot;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;
import skidway.timber.BearerRow;

final class PlanFilesTest {
  @TempDir Path folder;
  private Task task;

  @BeforeEach
  void siteWithOneSpot() {
    Spot given = SiteBuilder.spot("A1", "yard", 12, 9, 5, 1);
    task = Tasks.task(SiteBuilder.aSite().spots(given).build());
  }

  @Test
  void readsBackWhatItWrites() {
    Plan plan = SamplePlans.exact(1);
    Path file = PlanFiles.write(folder, plan);
    assertThat(file).isEqualTo(folder.resolve("plans").resolve("001.json"));
    assertThat(PlanFiles.read(file, task)).isEqualTo(plan);
  }

  @Test
  void roundsOnceAndThenNoMore() throws IOException {
    Random random = new Random(7);
    for (int revision = 1; revision <= 20; revision++) {
      Path first = PlanFiles.write(folder, SamplePlans.random(random, revision));
      Plan read = PlanFiles.read(first, task);
      assertThat(PlanText.of(read)).isEqualTo(Files.readString(first));
    }
  }

  @Test
  void roundsToWhatMatters() {
    Plan plan = SamplePlans.random(new Random(3), 1);
    Plan read = PlanFiles.read(PlanFiles.write(folder, plan), task);
    Step before = plan.steps().get(0);
    Step after = read.steps().get(0);
    assertThat(after.reachM()).isCloseTo(before.reachM(), within(5.1e-4));
    assertThat(after.massKg()).isCloseTo(before.massKg(), within(5.1e-3));
    assertThat(read.effort().carryS()).isCloseTo(plan.effort().carryS(), within(0.051));
    assertThat(read.reasons()).hasSameSizeAs(plan.reasons());
  }

  @Test
  void numbersFilesOneAfterTheOtherAndFindsTheNewest() throws IOException {
    assertThat(PlanFiles.newest(folder)).isEmpty();
    assertThat(PlanFiles.nextRevision(folder)).isEqualTo(1);
    Path first = PlanFiles.write(folder, SamplePlans.exact(1));
    PlanFiles.write(folder, SamplePlans.exact(2));
    Files.writeString(folder.resolve("plans").resolve("notes.json"), "{}");
    Files.writeString(folder.resolve("plans").resolve("010.json"), "{}");
    assertThat(PlanFiles.newest(folder)).contains(folder.resolve("plans").resolve("010.json"));
    assertThat(PlanFiles.nextRevision(folder)).isEqualTo(11);
    assertThat(PlanFiles.fingerprint(first)).matches("[0-9a-f]{64}");
  }

  @Test
  void neverOverwrites() throws IOException {
    Path first = PlanFiles.write(folder, SamplePlans.exact(1));
    String text = Files.readString(first);
    assertThatThrownBy(() -> PlanFiles.write(folder, SamplePlans.exact(1)))
        .isInstanceOf(NotWritten.class)
        .hasMessageContaining("the next plan of the job is revision 2");
    assertThat(Files.readString(first)).isEqualTo(text);
  }

  @Test
  void leavesNothingButThePlanAndTheLock() throws IOException {
    PlanFiles.write(folder, SamplePlans.exact(1));
    try (var files = Files.list(folder.resolve("plans"))) {
      assertThat(files.map(f -> f.getFileName().toString())).containsOnly("001.json", ".lock");
    }
  }

  @Test
  void refusesASecondWriter() throws IOException {
    Path plans = Files.createDirectories(folder.resolve("plans"));
    try (FileChannel other =
            FileChannel.open(
                plans.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        var lock = other.lock()) {
      assertThat(lock.isValid()).isTrue();
      assertThatThrownBy(() -> PlanFiles.write(folder, SamplePlans.exact(1)))
          .isInstanceOf(NotWritten.class)
          .hasMessageContaining("another writer is at work");
    }
    assertThat(PlanFiles.write(folder, SamplePlans.exact(1))).exists();
  }

  @Test
  void triesBeforeALongSearchWhetherItCanWrite() throws IOException {
    PlanFiles.requireRoom(folder);
    try (var files = Files.list(folder.resolve("plans"))) {
      assertThat(files.map(f -> f.getFileName().toString())).containsOnly(".lock");
    }
    Path other = Files.writeString(Files.createDirectory(folder.resolve("b")).resolve("plans"), "");
    assertThatThrownBy(() -> PlanFiles.requireRoom(folder.resolve("b")))
        .isInstanceOf(NotWritten.class)
        .hasMessageContaining(other + ": it cannot be written to");
  }

  @Test
  void saysWhyItCannotWrite() throws IOException {
    Files.writeString(folder.resolve("plans"), "a file in the way");
    assertThatThrownBy(() -> PlanFiles.write(folder, SamplePlans.exact(1)))
        .isInstanceOf(NotWritten.class)
        .hasMessageContaining("nothing was written. Way out:");
  }

  @Test
  void acceptsUnknownBundlesBecauseTheAuditJudgesThem() throws IOException {
    Path file = PlanFiles.write(folder, SamplePlans.exact(1));
    Files.writeString(file, Files.readString(file).replace("\"B02\"", "\"nowhere\""));
    assertThat(PlanFiles.read(file, task).stacks().get(0).bundleIds())
        .containsExactly("B01", "nowhere");
  }

  @Test
  void takesAStackSpotByTheIdThatTheSiteGives() throws IOException {
    Path file = PlanFiles.write(folder, SamplePlans.exact(1));
    String text = Files.readString(file);
    int from = text.indexOf('{', text.indexOf("\"stacks\"") + 12 + 4);
    int to = text.indexOf('}', from) + 1;
    Files.writeString(file, text.substring(0, from) + "\"A1\"" + text.substring(to));
    assertThat(PlanFiles.read(file, task).stacks().get(0).spot())
        .isEqualTo(task.site().spots().get(0));
    Files.writeString(file, text.substring(0, from) + "\"A2\"" + text.substring(to));
    assertThat(problems(file)).singleElement().asString().contains("did you mean \"A1\"?");
  }

  @Test
  void aCopyThatKeptItsRevisionIsToldWhereAndWhatToDo() throws IOException {
    Path first = PlanFiles.write(folder, SamplePlans.exact(1));
    Path copy = Files.copy(first, first.resolveSibling("002.json"));
    assertThat(problems(copy))
        .singleElement()
        .matches(p -> p.line() == 4 && p.column() == 15)
        .satisfies(p -> assertThat(p.found()).isEqualTo("1 as \"revision\" in 002.json"))
        .satisfies(p -> assertThat(p.wayOut()).startsWith("write 2 if this is a plan of its own"));
    Files.writeString(
        copy, Files.readString(copy).replaceFirst("\"revision\": 1,", "\"revision\": 2,"));
    assertThat(PlanFiles.read(copy, task).revision()).isEqualTo(2);
    Files.writeString(copy, Files.readString(copy).replaceFirst("\"revision\": 2,", ""));
    assertThat(problems(copy)).singleElement().asString().contains("without \"revision\"");
  }

  @Test
  void aPlanByAnotherNameMayBeOfAnyRevision() throws IOException {
    Path first = PlanFiles.write(folder, SamplePlans.exact(1));
    Path tried = Files.copy(first, first.resolveSibling("tried.json"));
    assertThat(PlanFiles.read(tried, task).revision()).isEqualTo(1);
  }

  @Test
  void reportsEveryMistakeOfAHandEdit() throws IOException {
    Path file = PlanFiles.write(folder, SamplePlans.exact(1));
    String text =
        Files.readString(file)
            .replace("\"reachM\": 12.5", "\"reachM\": \"far\"")
            .replace("\"kind\": \"set_down\"", "\"kind\": \"drop\"")
            .replace("\"capacityKg\": 2000", "\"capacityK\": 2000")
            .replace("\"rule\": \"stackHeight\"", "\"rule\": \"stackHight\"");
    Files.writeString(file, text);
    assertThat(problems(file))
        .extracting(Problem::found)
        .contains(
            "\"far\" as \"reachM\"",
            "\"drop\" as \"kind\"",
            "\"stackHight\" as \"rule\" (did you mean \"stackHeight\"?)")
        .anyMatch(f -> f.contains("without \"capacityKg\" (did you mean \"capacityK\"?)"));
    assertThat(problems(file)).allMatch(p -> p.line() > 1 && p.file().equals("001.json"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "count": 3 | "count": 0 | the number 0 as "count"; "count" is a whole number from 1 to
          "count": 3 | "count": 2.5 | the number 2.5 as "count"
          "spacingM": 1.2 | "spacing": 1.2 | without "spacingM" (did you mean "spacing"?)
          "endM": 0.3 | "endM": "1 ft" | "1 ft" as "endM"; "endM" is a number
          "lengthM": 0.75 | "lengthM": 0.75, "heightM": 0.1 | an unknown field "heightM"; a plan has no such field
          "bearers": { | "bearers": 3, "more": { | the number 3 as "bearers"; "bearers" is an object in braces
          """)
  void saysWhatIsWrongWithARowOfBearers(String old, String other, String message)
      throws IOException {
    Path file = PlanFiles.write(folder, SamplePlans.exact(1));
    String text = Files.readString(file);
    assertThat(text).contains(old);
    Files.writeString(file, text.replace(old, other));
    assertThat(problems(file)).extracting(Problem::text).anyMatch(p -> p.contains(message));
  }

  @Test
  void aStepWithoutBearersLaysNone() throws IOException {
    Path file = PlanFiles.write(folder, SamplePlans.exact(1));
    String text = Files.readString(file);
    int from = text.indexOf(",", text.indexOf("\"capacityKg\""));
    int to = text.indexOf('}', from) + 1;
    Files.writeString(file, text.substring(0, from) + text.substring(to));
    assertThat(PlanFiles.read(file, task).steps().get(0).bearers()).isEqualTo(BearerRow.NONE);
  }

  @Test
  void theTimeLostAtPickingIsPartOfEveryEffort() throws IOException {
    Path file = PlanFiles.write(folder, SamplePlans.exact(1));
    String text = Files.readString(file);
    assertThat(text).contains("\"pickS\": 0,");
    Files.writeString(file, text.replaceFirst("\"pickS\": 0,", "\"pickS\": 77.5,"));
    assertThat(PlanFiles.read(file, task).effort().pickS()).isEqualTo(77.5);
    Files.writeString(file, text.replaceFirst("\"pickS\": 0,", ""));
    assertThat(problems(file)).singleElement().asString().contains("without \"pickS\"");
  }

  @Test
  void aPlanFromBeforeDiggingInBundlesWasCountedIsReadAllTheSame() throws IOException {
    Path file = PlanFiles.write(folder, SamplePlans.exact(1));
    String text = Files.readString(file);
    assertThat(PlanFiles.read(file, task).effort().insideS()).hasValue(0);
    Files.writeString(file, text.replaceFirst("\"insideS\": 0,", "\"insideS\": 77.5,"));
    Effort counted = PlanFiles.read(file, task).effort();
    assertThat(counted.insideS()).hasValue(77.5);
    Files.writeString(file, text.replaceFirst("\"insideS\": 0,", ""));
    Effort before = PlanFiles.read(file, task).effort();
    assertThat(before.insideS()).isEmpty();
    assertThat(before.totalS()).isEqualTo(counted.totalS() - 77.5);
    assertThat(before.plus(counted).insideS()).isEmpty();
  }

  @Test
  void saysWhereAPlanIsNotJson() throws IOException {
    Path file = PlanFiles.write(folder, SamplePlans.exact(1));
    Files.writeString(
        file, Files.readString(file).replaceFirst("\"revision\": 1,", "\"revision\": 1"));
    assertThat(problems(file)).singleElement().matches(p -> p.line() == 5);
    assertThat(problems(folder.resolve("plans").resolve("099.json")))
        .singleElement()
        .asString()
        .contains("no such file")
        .contains("plans are files such as plans/001.json");
    assertThatThrownBy(() -> PlanFiles.fingerprint(folder.resolve("none.json")))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("none.json: found something that cannot be read");
  }

  @Test
  void writesFiguresAsPlainNumbers() {
    Plan plan = SamplePlans.exact(1);
    assertThat(PlanText.of(plan))
        .startsWith("{\n  \"format\": 1,\n  \"jobName\": \"sample\",\n  \"revision\": 1,")
        .contains("\"tiers\": [ \"B01\", \"B02\" ]")
        .contains("\"capacityKg\": 2000")
        .doesNotContain("E+")
        .doesNotContain("\r");
  }

  @Test
  void refusesFiguresThatAreNone() {
    Step step = SamplePlans.exact(1).steps().get(0);
    assertThat(step.reachM()).isPositive();
    Plan plan = SamplePlans.withLimit(OptionalDouble.of(Double.NaN));
    assertThatThrownBy(() -> PlanFiles.write(folder, plan))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(PlanFiles.newest(folder)).isEmpty();
  }

  private List<Problem> problems(Path file) {
    return catchThrowableOfType(BadInput.class, () -> PlanFiles.read(file, task)).problems();
  }
}
