package skidway.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkShapesTest {
  private static List<String> marks(String format) {
    List<String> marks = new ArrayList<>();
    for (String wall : List.of("A", "B")) {
      for (int course = 1; course <= 12; course++) {
        for (int position = 1; position <= 3; position++) {
          marks.add(String.format(Locale.ROOT, format, wall, course, position));
        }
      }
    }
    return marks;
  }

  @ParameterizedTest
  @CsvSource({
    "%s-%02d-%d",
    "%s.C%d.%d",
    "%s%02d%02d",
    "%s/%d/%d",
    "%s%02d-%d",
    "%s-%02d%02d",
    "%s %d-%d"
  })
  void usualShapesAreFound(String format) {
    MarkShapes.Proposal found = MarkShapes.of(marks(format), Set.of("A", "B")).orElseThrow();
    String mark = String.format(Locale.ROOT, format, "B", 7, 3);
    assertThat(found.pattern().apart(mark).orElseThrow().values())
        .containsEntry(Meaning.WALL, "B")
        .containsEntry(Meaning.COURSE, "7")
        .containsEntry(Meaning.POSITION, "3");
  }

  @Test
  void marksWithoutAPlaceHaveNoShape() {
    assertThat(MarkShapes.of(List.of("beam", "post", "rail"), Set.of())).isEmpty();
  }

  @Test
  void aPatternMayHoldAnyLiteral() {
    MarkPattern pattern = MarkPattern.of("W{wall}.C{course}.{position}", "l");
    assertThat(pattern.apart("W3.C12.2").orElseThrow().values()).containsEntry(Meaning.WALL, "3");
    assertThat(pattern.apart("W3-C12-2")).isEmpty();
  }
}
