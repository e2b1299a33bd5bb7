package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are not there, are no text or no JSON, and the report as a whole. */
final class BadFilesTest {
  @TempDir Path temp;

  @Test
  void aFolderThatIsNotThere() {
    assertThatThrownBy(() -> JobReader.read(temp.resolve("nowhere")))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining(
            "nowhere: found no such folder; a job is a folder that holds job.json");
  }

  @Test
  void aFileInPlaceOfTheFolder() {
    Path file = JobFolder.in(temp).path().resolve("job.json");
    assertThatThrownBy(() -> JobReader.read(file))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("job.json: found a file; a job is a folder");
  }

  @Test
  void anEmptyFolderMissesEveryFile() {
    assertThatThrownBy(() -> JobReader.read(temp))
        .hasMessageContaining(
            "job.json: found no such file; a job folder holds job.json, site.json,")
        .hasMessageContaining("loads.csv: found no such file");
  }

  @Test
  void aFileOfNearlyTheRightName() throws IOException {
    JobFolder folder = JobFolder.in(temp);
    Files.move(temp.resolve("bundles.csv"), temp.resolve("Bundle.csv"));
    assertThat(text(folder))
        .startsWith("bundles.csv: found no such file (did you mean \"Bundle.csv\"?)");
  }

  @Test
  void aFolderOfTheFilesName() throws IOException {
    JobFolder folder = JobFolder.in(temp);
    Files.delete(temp.resolve("pieces.csv"));
    Files.createDirectory(temp.resolve("pieces.csv"));
    assertThat(text(folder)).startsWith("pieces.csv: found a folder of that name");
  }

  @ParameterizedTest
  @ValueSource(strings = {"job.json", "site.json", "pieces.csv", "bundles.csv", "loads.csv"})
  void utf16AndBinaryAndEmptyFiles(String file) {
    JobFolder folder = JobFolder.in(temp);
    folder.write(file, folder.text(file).getBytes(StandardCharsets.UTF_16));
    assertThat(text(folder)).startsWith(file + ":1:1: found UTF-16 text");
    folder.write(file, folder.text(file).getBytes(StandardCharsets.UTF_16LE));
    assertThat(text(folder)).contains("found a zero byte, so this is a binary file or UTF-16 text");
    byte[] noise = new byte[5000];
    new Random(5).nextBytes(noise);
    folder.write(file, noise);
    assertThat(text(folder)).startsWith(file + ":");
    folder.write(file, " \n\n");
    assertThat(text(folder)).startsWith(file + ": found an empty file");
  }

  @Test
  void aTextInAnotherEncodingIsToldWhereItBegins() {
    JobFolder folder = JobFolder.in(temp).replace("job.json", "Hut at the lake", "Hütte");
    folder.write("job.json", folder.text("job.json").getBytes(StandardCharsets.ISO_8859_1));
    assertThat(text(folder)).startsWith("job.json:3:13: found bytes that are not UTF-8 text");
  }

  @Test
  void aFileBeyondTheLimitIsNotRead() {
    JobFolder folder = JobFolder.in(temp).write("site.json", " ".repeat(4_000_001));
    assertThat(text(folder)).startsWith("site.json: found more than 4 MB");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{",
        "[1]",
        "{} {}",
        "{\"a\": tru}",
        "{\"a\": 01}",
        "{'a': 1}",
        "\"x",
        "{\"a\": \"\\u12\"}",
        "1",
        "null"
      })
  void textThatIsNoJsonObject(String json) {
    JobFolder folder = JobFolder.in(temp).write("job.json", json);
    assertThat(text(folder)).startsWith("job.json:1:");
  }

  @Test
  void jsonIsBounded() {
    JobFolder folder = JobFolder.in(temp).write("job.json", "[".repeat(100_000));
    assertThat(text(folder)).contains("text that is not JSON (Document nesting depth");
    folder.write("job.json", "{\"name\": \"" + "x".repeat(1_000_000) + "\"}");
    assertThat(text(folder)).contains("text that is not JSON (String value length");
    folder.write("job.json", "{\"format\": " + "1".repeat(100) + "}");
    assertThat(text(folder))
        .contains(
            "text that is not JSON (Number value length (100) exceeds the maximum allowed (60))");
  }

  @Test
  void allMistakesOfAllFilesAreOneReportInFileOrder() {
    JobFolder folder =
        JobFolder.in(temp)
            .replace("loads.csv", "gate", "nowhere")
            .replace("bundles.csv", "16 ft", "16 stone")
            .replace("pieces.csv", "W2,1,2,10 ft", "W9,1,2,ten ft")
            .replace("site.json", "\"6 in\"", "\"6 on\"")
            .replace("job.json", "5 ft", "5 lb");
    assertThat(Spoiled.problems(folder))
        .extracting(Problem::file)
        .containsExactly(
            "job.json", "site.json", "pieces.csv", "pieces.csv", "bundles.csv", "loads.csv");
  }

  @Test
  void oneMistakeIsNotReportedAgainWhereItIsReferredTo() {
    JobFolder folder = JobFolder.in(temp).write("site.json", "{");
    assertThat(Spoiled.problems(folder)).extracting(Problem::file).containsExactly("site.json");
    folder = JobFolder.in(temp).write("bundles.csv", "bundle\nB01\n");
    assertThat(Spoiled.problems(folder)).extracting(Problem::file).containsOnly("bundles.csv");
    folder = JobFolder.in(temp).replace("job.json", "\"us\"", "\"feet\"");
    assertThat(Spoiled.problems(folder)).extracting(Problem::file).containsExactly("job.json");
  }

  @Test
  void pointsAtThePlace() {
    JobFolder folder = JobFolder.in(temp).replace("bundles.csv", "16'-4 1/2\"", "3 stone");
    assertThat(Spoiled.problems(folder).get(0).picture())
        .isEqualTo(
            """
            bundles.csv:3:10: found "3 stone" as length; a length is a number in feet or text such as \
            16'-4 1/2" or 4.99 m; the length of a bundle is 1" to 82'-0 1/2". Way out: write it like that.
                B02,L1,2,3 stone,2 ft,1 ft
                         ^""");
  }

  @Test
  void showsOnlyTheNeighbourhoodInALongLine() {
    Problem problem =
        new Problem("a.csv", 1, 5000, "x", "y", "z", "a".repeat(4999) + "\tb".repeat(3000));
    assertThat(problem.picture().lines().skip(1)).allMatch(line -> line.length() <= 105);
    assertThat(problem.picture()).doesNotContain("\t");
  }

  @Test
  void lineEndsDoNotChangeTheFingerprintAndAnyOtherChangeDoes() {
    JobFolder folder = JobFolder.in(temp);
    String before = JobReader.read(temp).fingerprint();
    for (String file : JobReader.FILES) {
      folder.write(file, "\ufeff" + folder.text(file).replace("\n", "\r\n"));
    }
    assertThat(JobReader.read(temp).fingerprint()).isEqualTo(before);
    folder.replace("pieces.csv", "10 ft", "11 ft");
    assertThat(JobReader.read(temp).fingerprint()).isNotEqualTo(before);
  }

  private static String text(JobFolder folder) {
    return Spoiled.problems(folder).get(0).text();
  }
}
