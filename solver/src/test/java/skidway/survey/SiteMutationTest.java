package skidway.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.job.BadInput;
import skidway.job.Mutator;
import skidway.job.Problem;

/** Whatever lines are changed into, they become a site or are refused with problems. */
final class SiteMutationTest {
  private static final int TRIES = 2000;
  private static final int MANY_TRIES = 100_000;

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
      "<svg xmlns='http://www.w3.org/2000/svg'><g id='a'><path id='w' d='M0 8000 H10000 V0 h-1e4 Z'/></g></svg>";

  @TempDir Path folder;

  @Test
  void ofLines() throws IOException {
    lines(TRIES);
  }

  @Tag("long")
  @Test
  void ofLinesManyTimes() throws IOException {
    lines(MANY_TRIES);
  }

  private void lines(int tries) throws IOException {
    assertThat(Lines.read(folder, EVERYTHING).task().site().walls()).hasSize(5);
    tried(SiteSurvey.FILE, EVERYTHING, tries);
  }

  @Test
  void ofADrawing() throws IOException {
    String lines =
        Lines.HOUSE
            .replaceAll("(?m)^wall W1 .*$", "plan house.svg unit 1 mm shape w")
            .replaceAll("(?m)^wall W.*\n", "");
    Lines.write(folder, "house.svg", DRAWN);
    assertThat(Lines.read(folder, lines).task().site().walls()).hasSize(4);
    tried("house.svg", DRAWN, TRIES);
  }

  /** Also a file that was changed by hand, which the lines are joined with. */
  @Test
  void ofAnOlderSite() throws IOException {
    Lines.read(folder, EVERYTHING).write();
    tried("site.json", Files.readString(folder.resolve("site.json")), TRIES);
  }

  private void tried(String file, String text, int tries) throws IOException {
    Random random = new Random(file.hashCode());
    int refused = 0;
    for (int i = 0; i < tries; i++) {
      Files.write(folder.resolve(file), Mutator.mutated(text, random));
      try {
        Path description = folder.resolve(SiteSurvey.FILE);
        assertThat(SiteSurvey.read(folder, description, false).task().site().walls()).isNotEmpty();
      } catch (BadInput e) {
        refused++;
        check(e.problems());
      }
    }
    assertThat(refused).isBetween(tries / 4, tries);
  }

  private static void check(List<Problem> problems) {
    assertThat(problems).isNotEmpty();
    for (Problem p : problems.subList(0, Math.min(20, problems.size()))) {
      assertThat(p.text()).contains(": found ").contains(". Way out: ").hasSizeLessThan(1200);
      assertThat(p.picture()).startsWith(p.text());
    }
  }
}
