package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.plan.Plan;
import skidway.plan.WavePlan;

final class WaveFilesTest {
  private static final Plan PLAN = SamplePlans.exact(1);

  @TempDir Path temp;

  private Path planFile = Path.of("");
  private Path file = Path.of("");

  @BeforeEach
  void writePlan() {
    planFile = PlanFiles.write(temp, PLAN);
    file = WaveFiles.beside(planFile);
  }

  private WavePlan written() {
    WavePlan waves = SampleWaves.exact(PlanMark.of(PLAN, planFile));
    assertThat(WaveFiles.write(temp, waves)).isEqualTo(file);
    return waves;
  }

  private List<Problem> problems() {
    return catchThrowableOfType(BadInput.class, () -> WaveFiles.read(planFile, PLAN)).problems();
  }

  @Test
  void aPlanWithoutWavesHasNone() {
    assertThat(WaveFiles.read(planFile, PLAN)).isEmpty();
  }

  @Test
  void whatIsWrittenIsReadBack() throws IOException {
    WavePlan waves = written();
    SavedWaves read = WaveFiles.read(planFile, PLAN).orElseThrow();
    assertThat(read.waves()).isEqualTo(waves);
    assertThat(read.remarks()).isEmpty();
    assertThat(WaveText.of(read.waves())).isEqualTo(Files.readString(file));
  }

  @Test
  void wavesOfAPlanThatWasChangedSinceAreRefused() throws IOException {
    written();
    Files.writeString(planFile, Files.readString(planFile).replace("B02", "B07"));
    assertThat(problems()).hasSize(1);
    assertThat(problems().get(0).text())
        .startsWith("001-waves.json:5:11: found waves of another plan, fingerprint ")
        .contains("plan the waves of this plan anew");
  }

  @Test
  void wavesOfAnotherRevisionAreRefused() throws IOException {
    WaveFiles.write(temp, SampleWaves.exact(new PlanMark(2, PlanFiles.fingerprint(planFile))));
    Files.move(temp.resolve("plans/002-waves.json"), file);
    assertThat(problems()).hasSize(1);
    assertThat(problems().get(0).text())
        .startsWith("001-waves.json:4:15: found waves of revision 2;")
        .contains("waves of revision 1 as its file is now");
  }

  @Test
  void whatNobodyKnowsIsRemarkedOnAndLeftOut() throws IOException {
    WavePlan waves = written();
    Files.writeString(
        file, Files.readString(file).replaceFirst("\"laidBefore\"", "\"foreman\": \"Ann\", $0"));
    SavedWaves read = WaveFiles.read(planFile, PLAN).orElseThrow();
    assertThat(read.waves()).isEqualTo(waves);
    assertThat(read.remarks()).hasSize(1);
    assertThat(read.remarks().get(0).text()).contains("unknown field \"foreman\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "\"number\": 2 | \"number\": 3 | this one is 2",
        "\"toCourse\": 2 | \"toCourse\": 2000000 | a whole number from 1 to 1000",
        "\"id\": \"P1.2\" | \"id\": \"P1.1\" | a second pile \"P1.1\"",
        "\"id\": \"P1.2\" | \"id\": \"N-01\" | a stack or a bundle of that name",
        "\"id\": \"P1.2\" | \"id\": \"B01\" | a stack or a bundle of that name",
        "\"by_machine\" | \"by_crane\" | \"way\" is one of by_hand, by_machine",
        "\"W3-1\" | 7 | found the number 7 in \"layers\"",
        "\"people\": 2 | \"people\": 0 | whole number from 1",
        "\"format\": 1 | \"format\": 2 | reads \"format\": 1"
      })
  void oneMistakeIsOneProblemAtItsPlace(String sound, String spoilt, String told)
      throws IOException {
    written();
    String text = Files.readString(file);
    int at = text.indexOf(sound);
    assertThat(at).isPositive();
    Files.writeString(file, text.substring(0, at) + spoilt + text.substring(at + sound.length()));
    long line = text.substring(0, at).lines().count();
    assertThat(problems()).hasSize(1);
    assertThat(problems().get(0).text()).startsWith("001-waves.json:" + line + ":").contains(told);
  }
}
