package skidway.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.job.BadInput;

/** What somebody added to {@code site.json} by hand outlives the next run. */
final class HandMadeTest {
  @TempDir Path folder;

  @BeforeEach
  void firstRun() {
    Lines.read(folder, Lines.HOUSE).write();
  }

  private String site() throws IOException {
    return Files.readString(folder.resolve("site.json"));
  }

  private void byHand(String old, String other) throws IOException {
    assertThat(site()).contains(old);
    Files.writeString(folder.resolve("site.json"), site().replace(old, other));
  }

  @Test
  void aSecondRunOfTheSameLinesChangesNothing() throws IOException {
    String before = site();
    SiteSurvey again = Lines.read(folder, Lines.HOUSE);
    again.write();
    assertThat(site()).isEqualTo(before);
    assertThat(again.notes()).noneMatch(n -> n.startsWith("Kept"));
  }

  @Test
  void fieldsAndThingsThatTheLinesDoNotTellAreKept() throws IOException {
    byHand("\"soil\": \"clay\"", "\"soil\": \"clay\", \"total\": \"9000 lb\"");
    byHand(
        "\"machine\"",
        "\"lanes\": [{\"id\": \"mine\", \"line\": [[0, -5], [10, -5]], \"width\": 4}],\n  \"owner\": \"Ida\",\n  \"machine\"");
    SiteSurvey again = Lines.read(folder, Lines.HOUSE.replace("wide 12'", "wide 14'"));
    again.write();
    assertThat(site()).contains("9000 lb", "\"mine\"", "\"owner\": \"Ida\"");
    assertThat(again.task().site().yards().get(0).totalKg()).isPresent();
    assertThat(again.notes().stream().filter(n -> n.startsWith("Kept from site.json"))).hasSize(3);
    assertThat(again.remarks()).anyMatch(p -> p.found().contains("unknown field \"owner\""));
    SiteSurvey third = Lines.read(folder, Lines.HOUSE);
    assertThat(third.notes().stream().filter(n -> n.startsWith("Kept from site.json"))).hasSize(3);
  }

  @Test
  void aFigureChangedByHandAloneIsKept() throws IOException {
    byHand("\"allowed\": \"50 psf\"", "\"allowed\": \"40 psf\"");
    SiteSurvey again = Lines.read(folder, Lines.HOUSE);
    again.write();
    assertThat(site()).contains("\"allowed\": \"40 psf\"");
    assertThat(again.notes()).anyMatch(n -> n.contains("\"allowed\" of \"decks\" \"deck\""));
  }

  @Test
  void aFigureChangedHereAndThereIsForAPersonToDecide() throws IOException {
    byHand("\"allowed\": \"50 psf\"", "\"allowed\": \"40 psf\"");
    String before = site();
    String other = Lines.HOUSE.replace("floor 50 psf", "floor 60 psf");
    assertThatThrownBy(() -> Lines.read(folder, other))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("found \"40 psf\" as \"allowed\" of \"decks\" \"deck\"")
        .hasMessageContaining("--replace");
    assertThat(site()).isEqualTo(before);
    Lines.read(folder, other, true).write();
    assertThat(site()).contains("60 psf").doesNotContain("40 psf");
  }

  @Test
  void whatTheLinesTellNoLongerGoes() throws IOException {
    String withTree = Lines.HOUSE + "tree oak 12' off W2 middle radius 2'\n";
    Lines.read(folder, withTree).write();
    assertThat(site()).contains("oak");
    SiteSurvey without = Lines.read(folder, Lines.HOUSE);
    without.write();
    assertThat(site()).doesNotContain("oak");
    assertThat(without.notes()).noneMatch(n -> n.startsWith("Kept"));
  }

  @Test
  void aFileThatWasNeverToldIsNotOverwritten() throws IOException {
    Files.delete(folder.resolve(".site.told.json"));
    byHand("\"Lake meadow\"", "\"Other meadow\"");
    assertThatThrownBy(() -> Lines.read(folder, Lines.HOUSE))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("site.json:3:11: found \"Other meadow\" as \"name\"");
  }
}
