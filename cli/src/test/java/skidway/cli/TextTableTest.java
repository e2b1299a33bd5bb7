package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {
  @Test
  void wordsStandLeftAndFiguresRight() {
    TextTable table = new TextTable("rule", ">value");
    table.row("zoneLoad", "50 psf");
    table.row("once", "1");
    assertThat(table.lines())
        .containsExactly("rule       value", "zoneLoad  50 psf", "once           1");
  }

  @Test
  void longCellsBreakAndNotesKeepToNoColumn() {
    TextTable table = new TextTable("a", "flag").narrow(1, 12);
    table.row("x", "from memory, confirm");
    table.note(List.of("    a note that is wider than the table"));
    table.row("y", "seen");
    assertThat(table.lines())
        .containsExactly(
            "a  flag",
            "x  from memory,",
            "   confirm",
            "    a note that is wider than the table",
            "y  seen");
  }

  @Test
  void aRowWithoutAllCellsIsRefused() {
    TextTable table = new TextTable("a", "b");
    assertThatThrownBy(() -> table.row("x")).hasMessageContaining("2 cells");
  }

  @Test
  void sentencesBreakBetweenWordsAndKeepTheirGap() {
    String words = "word ".repeat(40);
    List<String> lines = Wrap.sentence(words, 2, 4);
    assertThat(lines).hasSizeGreaterThan(1).allMatch(l -> l.length() <= Wrap.SCREEN);
    assertThat(lines.get(0)).startsWith("  word");
    assertThat(lines.get(1)).startsWith("    word");
    assertThat(String.join(" ", lines).replaceAll("\\s+", " ").strip()).isEqualTo(words.strip());
    assertThat(Wrap.words("a" + "b".repeat(20) + " c", 5))
        .containsExactly("a" + "b".repeat(20), "c");
  }

  @Test
  void csvCellsComeBackAsTheyWere() {
    String row = Csv.row("plain", "with, comma", "say \"so\"", "", "1.5");
    assertThat(row).isEqualTo("plain,\"with, comma\",\"say \"\"so\"\"\",,1.5");
    assertThat(CsvLine.cells(row)).containsExactly("plain", "with, comma", "say \"so\"", "", "1.5");
    assertThat(Csv.figure(Double.NaN)).isEmpty();
    assertThat(Csv.figure(0.3048)).isEqualTo("0.3048");
  }
}
