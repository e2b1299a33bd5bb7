package skidway.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineBreaksTest {
  private static List<String> parts(String text) {
    LineBreaks breaks = new LineBreaks();
    breaks.setText(text);
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int to = breaks.next(); to != BreakIterator.DONE; to = breaks.next()) {
      parts.add(text.substring(from, to));
      from = to;
    }
    return parts;
  }

  @Test
  void numbersFromToStayInOneLine() {
    assertThat(parts("W1 courses 4-7; W2")).containsExactly("W1 ", "courses ", "4-7; ", "W2");
    assertThat(parts("on 2031-05-06")).containsExactly("on ", "2031-05-06");
  }

  @Test
  void timesAndLengthsStayInOneLine() {
    assertThat(parts("at 08:00)")).containsExactly("at ", "08:00)");
    assertThat(parts("6, 2'-9 1/2\" apart")).containsExactly("6, ", "2'-9 1/2\" ", "apart");
    assertThat(parts("at most 1\u00a0369 kg")).containsExactly("at ", "most ", "1\u00a0369 ", "kg");
    assertThat(parts("step 3 1/2 now: 4")).containsExactly("step ", "3 1/2 ", "now: ", "4");
  }

  @Test
  void wordsAndMarksPartAtTheirHyphens() {
    assertThat(parts("half-log W1-C4")).containsExactly("half-", "log ", "W1-", "C4");
  }

  @Test
  void whatIsLongerThanAnyWordOfOursParts() {
    assertThat(parts("0123456789".repeat(3)))
        .containsExactly("01234567", "89012345", "67890123", "456789");
    assertThat(parts("1234-5678-9012-3456-7890"))
        .containsExactly("1234-567", "8-9012-3", "456-7890");
  }
}
