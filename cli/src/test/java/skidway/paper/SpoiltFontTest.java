package skidway.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
  @TempDir private Path dir = Path.of("");

  @Test
  void aSpoiltFontIsTakenOrRefused() throws IOException {
    byte[] font = Files.readAllBytes(OddFont.with(0x6728, dir.resolve("odd.ttf")));
    Path file = dir.resolve("named.ttf");
    Spoiling.ofFewer(
        "font",
        random -> spoilt(font, random),
        input -> {
          Files.write(file, input);
          try {
            assertThat(Press.with(Optional.of(file))).isNotNull();
          } catch (BadFont e) {
            assertThat(e.sentence()).contains("Way out");
            throw new BadInput(List.of(new Problem("", 0, 0, "it", "fonts", "another", "")));
          }
        });
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
