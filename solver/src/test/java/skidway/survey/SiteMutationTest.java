package skidway.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.job.BadInput;
import skidway.job.Mutator;
import skidway.job.Problem;
import skidway.job.Problems;
import skidway.job.SourceFile;
import skidway.job.Spoiling;

/** Whatever lines are changed into, they become a site or are refused with problems. */
final class SiteMutationTest {
  private static final String EVERYTHING =
      Lines.HOUSE
          + """
          north 75 # by the compass
          closing 1:300
          door D in W1 10' from left wide 3' head 6'-8"
          window N in W2, middle, 4' wide, sill 3', head 7'
          yard north 12' off W3 6' from left long 20' wide 10' bears 1000 psf slope 2 % total 9 t
          lane L from 3' off W2 2' from left to 30' off W2 2' from right wide 5'
          tree oak 12' off W4 6' from right radius 2' margin 3' because "old oak"
          trench T 12' off W2, middle, long 10', wide 4', deep 4'
          keep well outline from 30' off W2 middle east 3' north 3' west 3' because "well" walkable
          hole stair in deck 12' inside W1 4' from left long 10' wide 3'
          steps S onto deck at W1 10' from left run 3' wide 3'
          spot A1 in south kind stack 12' off W1 6' from left long 17' wide 3' open wall strip 3'
          joists of deck square to W1 supports 0 14' 28' first 0 spacing 16" live 40 psf
          partition P from W1 12' to W3 starter full
          wire street 45' off W1 voltage 7.2 kV
          """;

  private static final String DRAWN =
      "<svg xmlns='http://www.w3.org/2000/svg'><g id='a'><path id='w' d='M0 8000 H10000 V0 h-1e4"
          + " Z'/></g></svg>";

  @TempDir Path folder;

  @Test
  void ofLines() throws IOException {
    assertThat(Lines.read(folder, EVERYTHING).task().site().walls()).hasSize(5);
    Spoiling.atOnce(List.of(lines("site-lines"), lines("more-site-lines")));
  }

  /** Lines that are read in a folder of their own. */
  private Spoiling.Share lines(String name) throws IOException {
    Path own = Files.createDirectory(folder.resolve(name));
    return new Spoiling.Share(
        name,
        random -> Mutator.mutated(EVERYTHING, random),
        input -> {
          Files.write(own.resolve(SiteSurvey.FILE), input);
          survey(own);
        });
  }

  @Test
  void ofADrawing() throws IOException {
    String lines =
        Lines.HOUSE
            .replaceAll("(?m)^wall W1 .*$", "plan house.svg unit 1 mm shape w")
            .replaceAll("(?m)^wall W.*\n", "");
    Lines.write(folder, "house.svg", DRAWN);
    assertThat(Lines.read(folder, lines).task().site().walls()).hasSize(4);
    Spoiling.ofText(
        "drawing",
        DRAWN,
        input -> {
          Problems problems = new Problems();
          String text = new String(input, StandardCharsets.UTF_8);
          new PlanDrawing(new SourceFile("house.svg", text), problems).corners("w");
          problems.throwIfAny(List.of());
        });
  }

  /** A file that was changed by hand, and what the lines said before, in turn. */
  @Test
  void ofAnOlderSite() throws IOException {
    Lines.read(folder, EVERYTHING).write();
    List<String> files = List.of("site.json", ".site.told.json");
    List<String> texts =
        List.of(
            Files.readString(folder.resolve(files.get(0))),
            Files.readString(folder.resolve(files.get(1))));
    int[] turn = {0};
    Spoiling.ofFewer(
        "older-site",
        random -> Mutator.mutated(texts.get(turn[0]++ % 2), random),
        input -> {
          int spoilt = (turn[0] + 1) % 2;
          Files.write(folder.resolve(files.get(spoilt)), input);
          Files.writeString(folder.resolve(files.get(1 - spoilt)), texts.get(1 - spoilt));
          survey(folder);
        });
  }

  /** Odd answers to each question in turn; one that is taken is taken back. */
  @Test
  void ofAnAnswer() throws IOException {
    List<String> answers = InterviewTest.ANSWERS;
    Interview[] interview = {Interview.of(List.of()).orElseThrow()};
    int[] asked = {0};
    Spoiling.of(
        "answer",
        random -> Mutator.mutated(answers.get(random.nextInt(answers.size())) + "   ", random),
        input -> {
          Optional<String> told = interview[0].answer(new String(input, StandardCharsets.UTF_8));
          if (told.isEmpty()) {
            interview[0].back();
          }
          if (++asked[0] % 20 == 0) {
            interview[0].answer(answers.get(asked[0] / 20 % answers.size()));
          }
          if (interview[0].next().isEmpty()) {
            interview[0] = Interview.of(List.of()).orElseThrow();
            asked[0] = 0;
          }
          if (told.isPresent()) {
            assertThat(told.get()).isNotBlank();
            throw new BadInput(List.of(new Problem("", 0, 0, "it", "another", "retry", "")));
          }
        });
  }

  private static void survey(Path folder) {
    Path description = folder.resolve(SiteSurvey.FILE);
    assertThat(SiteSurvey.read(folder, description, false).task().site().walls()).isNotEmpty();
  }
}
