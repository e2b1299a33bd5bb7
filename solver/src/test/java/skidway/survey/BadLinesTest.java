package skidway.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every wrong line is told at its place, with what is allowed and a way out; nothing is written.
 */
final class BadLinesTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "units us | units yards | 1:7: found \"yards\" as units",
        "units us | # | no line \"units\"",
        "wall W1 east 36' | wal W1 east 36' | 5:1: found \"wal\" at the beginning of a line (did you mean \"wall\" or \"walls\"?)",
        "wall W1 east 36' | wall W1 eats 36' | 5:9: found \"eats\" as a direction",
        "wall W1 east 36' | wall W1 east 36,5' | 5:14: found \"36,5'\" as length",
        "wall W1 east 36' | wall W1 east | 5:13: found the end of the line; a length is",
        "wall W1 east 36' | wall W1 turn left 36' | 5:9: found \"turn\" without a line before",
        "wall W1 east 36' | wall W1 east 36' thik 8\" | 5:18: found \"thik\" of a wall (did you mean \"thick\"?)",
        "wall W1 east 36' | wall W1 east 36' thick 8' | 5:24: found 8' as length",
        "wall W3 west 36' | wall W3 west 34' | 8:9: found walls that end 2'-0\" from where they began, 1:63",
        "walls thick 8\" | # | found a wall whose thickness nobody said",
        "wall W2 north 28' | wall W1 north 28' | 6:6: found a second wall \"W1\"",
        "wall W2 north 28' | wall W2 close | 6:9: found \"close\" before the last wall",
        "off W1 full | off W9 full | 10:20: found unknown wall \"W9\" (did you mean \"W1\"",
        "soil clay | soil clay soil sand | 10:54: found a second \"soil\"",
        "soil clay | soil cley | 10:49: found unknown soil \"cley\" (did you mean \"clay\"",
        "full length wide | 6' from left wide | 10:12: found a yard without \"long\"",
        "off W1 full length | off W1 long 9' | 10:12: found a yard without its place along the wall",
        "chart 20' | chart 50' | 14:20: found reach",
        "boundary around 30' | boundary outline from 9' off W1 middle east 9' north 9' west 9' | reaching beyond the site's boundary",
        "course 6\" | # | no line \"course\"; a site needs one, as in: course 6\"",
        "machine forklift | # | 13:7: found a stand without a machine",
        "machine forklift | machine forklift grip hands | 12:23: found \"hands\" as \"grip\"",
      })
  void isTold(String line, String other, String expected) {
    String text = Lines.HOUSE.replace(line, other);
    assertThat(text).isNotEqualTo(Lines.HOUSE);
    assertThat(Lines.problems(folder, text)).contains(expected).contains("Way out: ");
    assertThat(folder.resolve("site.json")).doesNotExist();
  }

  @Test
  void allAreToldTogetherInTheOrderOfTheLines() {
    String text =
        Lines.HOUSE.replace("soil clay", "soli clay").replace("30' wide 9'", "30' wide 90'");
    assertThat(Lines.problems(folder, text).lines())
        .hasSize(2)
        .satisfiesExactly(
            first -> assertThat(first).startsWith("site.txt:10:44: "),
            second -> assertThat(second).startsWith("site.txt:11:44: "));
  }

  @Test
  void aMistakeInTheWallsIsToldOnce() {
    String text = Lines.HOUSE.replace("W2 north 28'", "W2 nroth 28'");
    assertThat(Lines.problems(folder, text).lines()).hasSize(1);
  }

  @Test
  void unitsThatTheJobDoesNotHaveAreRefused() throws Exception {
    Files.writeString(
        folder.resolve("job.json"), "{\"format\": 1, \"name\": \"x\", \"units\": \"metric\"}");
    assertThat(Lines.problems(folder, Lines.HOUSE)).contains("job.json says metric");
  }
}
