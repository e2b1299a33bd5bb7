package skidway.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.job.BadInput;
import skidway.job.Problem;
import skidway.job.Spoiling;

/** Whatever happens to a font that somebody names, it is taken or refused with a sentence. */
class SpoiltFontTest {
  private static final String PAGE =
      "<html><head><title>t</title></head><body><p>木</p></body></html>";

  @TempDir private Path dir = Path.of("");

  @Test
  void aSpoiltFontIsTakenOrRefused() throws IOException {
    byte[] font = Files.readAllBytes(OddFont.with(0x6728, dir.resolve("odd.ttf")));
    Path file = dir.resolve("named.ttf");
    int[] tried = {0};
    Spoiling.ofFewer(
        "font",
        random -> spoilt(font, random),
        input -> {
          Files.write(file, input);
          try {
            FontSearch search = FontSearch.with(Optional.of(file), List.of());
            // To see which letters are wanted takes longer than to read the font.
            if (tried[0]++ % 20 == 0) {
              search.fill(FontShelf.ours(), List.of("木"));
            }
          } catch (BadFont e) {
            assertThat(e.sentence()).contains("Way out");
            throw new BadInput(List.of(new Problem("", 0, 0, "it", "fonts", "another", "")));
          }
        });
  }

  /** A font that has lost one of its tables prints a page or is refused before any is begun. */
  @Test
  void aFontWithATableLostIsRefusedOrPrints() throws IOException {
    byte[] font = Files.readAllBytes(OddFont.with(0x6728, dir.resolve("odd.ttf")));
    Path file = dir.resolve("named.ttf");
    List<String> refused = new ArrayList<>();
    List<String> tables = OddFont.tables(font);
    for (int i = 0; i < tables.size(); i++) {
      Files.write(file, OddFont.without(i, font));
      try {
        Press press = Press.searching(FontSearch.with(Optional.of(file), List.of()));
        assertThat(press.press(PAGE, new Foot("a", "b", 9), 1).bytes()).isNotEmpty();
      } catch (BadFont e) {
        assertThat(e.sentence()).contains("named.ttf", "damaged", "Way out");
        refused.add(tables.get(i));
      }
    }
    assertThat(refused).contains("OS/2", "cmap", "glyf", "head", "hmtx", "post");
  }

  @Test
  void aFontOfWhichOneLetterWouldFillTheMemoryIsRefused() throws IOException {
    Path file = OddFont.withHugeLetter(0x6728, dir.resolve("huge.ttf"));
    assertThatExceptionOfType(BadFont.class)
        .isThrownBy(() -> FontSearch.with(Optional.of(file), List.of()))
        .satisfies(e -> assertThat(e.sentence()).contains("huge.ttf", "damaged", "Way out"));
  }

  /** Most of the changes fall on the tables' directory, at the beginning. */
  private static byte[] spoilt(byte[] font, Random random) {
    byte[] spoilt = font.clone();
    for (int changes = 1 + random.nextInt(4); changes > 0; changes--) {
      int most = random.nextInt(3) == 0 ? spoilt.length : Math.min(spoilt.length, 300);
      spoilt[random.nextInt(most)] = (byte) random.nextInt(256);
    }
    return spoilt;
  }
}
