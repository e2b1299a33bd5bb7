package skidway.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.job.BadInput;

/** Whatever happens to a list, it is taken or refused with problems: nothing else comes out. */
class SpoiledListsTest {
  private static final Path DEMO = Path.of("..", "demo-data");

  private static final List<String> LISTS =
      List.of("feet-and-inches.csv", "millimetres.csv", "counts.xlsx", "marks.xlsx");

  @TempDir private Path dir = Path.of("");

  @Test
  void twoThousand() throws IOException {
    spoil(2_000);
  }

  @Test
  @Tag("long")
  void aHundredThousand() throws IOException {
    spoil(100_000);
  }

  private void spoil(int tries) throws IOException {
    for (String file : List.of("job.json", "site.json", "loads.csv")) {
      Files.copy(DEMO.resolve("cabin").resolve(file), dir.resolve(file));
    }
    Random random = new Random(5);
    int refused = 0;
    for (int i = 0; i < tries; i++) {
      String name = LISTS.get(i % LISTS.size());
      byte[] bytes = Files.readAllBytes(DEMO.resolve("lists").resolve(name));
      Path list = Files.write(dir.resolve(name), spoilt(bytes, random));
      try {
        Intake intake = Intake.open(dir, list, Wishes.NONE);
        assertThat(intake.columns()).isNotEmpty();
        intake.take();
      } catch (BadInput e) {
        refused++;
        assertThat(e.problems()).isNotEmpty();
        assertThat(e.problems().get(0).text()).contains(": found ").contains(". Way out: ");
      }
    }
    assertThat(refused).isBetween(tries / 2, tries);
  }

  /** One to four bytes changed, cut out or doubled, or the end cut off. */
  private static byte[] spoilt(byte[] bytes, Random random) {
    byte[] spoilt = bytes.clone();
    for (int i = 0; i <= random.nextInt(4); i++) {
      int at = random.nextInt(spoilt.length);
      int length = Math.min(spoilt.length - at, 1 + random.nextInt(20));
      switch (random.nextInt(4)) {
        case 0 -> spoilt[at] = (byte) random.nextInt(256);
        case 1 ->
            System.arraycopy(
                spoilt, at, spoilt, random.nextInt(spoilt.length - length + 1), length);
        case 2 -> spoilt[at] = (byte) ",;\"\n\t'.-/0x<>&{}".charAt(random.nextInt(16));
        default -> {
          if (random.nextInt(10) == 0 && spoilt.length > 100) {
            spoilt = Arrays.copyOf(spoilt, 50 + at / 2);
          }
        }
      }
    }
    return spoilt;
  }
}
