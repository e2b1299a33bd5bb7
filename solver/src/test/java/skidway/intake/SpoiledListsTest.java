package skidway.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.job.JobDraft;
import skidway.job.JobReader;
import skidway.job.Mutator;
import skidway.job.Spoiling;
import skidway.timber.Delivery;

/** Whatever happens to a list, it is taken or refused with problems: nothing else comes out. */
class SpoiledListsTest {
  private static final Path DEMO = Path.of("..", "demo-data");

  private static final List<String> LISTS =
      List.of("feet-and-inches.csv", "millimetres.csv", "counts.xlsx", "marks.xlsx");

  @TempDir private Path dir = Path.of("");

  @BeforeEach
  void aJobWithoutTimbers() throws IOException {
    for (String file : List.of("job.json", "site.json", "loads.csv")) {
      Files.copy(DEMO.resolve("cabin").resolve(file), dir.resolve(file));
    }
  }

  /**
   * Half of them byte by byte; as those of a packed file seldom get past the unpacking, the other
   * half are spreadsheets whose inside is spoilt.
   */
  @Test
  void listsOfAllKinds() throws IOException {
    JobDraft job = JobDraft.open(dir);
    int[] turn = {0};
    Spoiling.of(
        "lists",
        random ->
            turn[0]++ % 2 == 0
                ? spoilt(bytes(LISTS.get(random.nextInt(LISTS.size()))), random)
                : repacked(bytes("marks.xlsx"), random),
        input -> takes(job, input));
  }

  private void takes(JobDraft job, byte[] input) throws IOException {
    Path list = Files.write(dir.resolve("list"), input);
    Intake intake = new Intake(Reading.open(job, list, Wishes.NONE));
    assertThat(intake.columns()).isNotEmpty();
    intake.take();
  }

  @Test
  void aTickedSheet() throws IOException {
    Delivery delivery = JobReader.read(DEMO.resolve("cabin")).task().delivery();
    StringBuilder sheet = new StringBuilder("load,bundle,piece,there,note\n");
    delivery.bundles().stream()
        .filter(b -> b.loadId().equals("L1"))
        .forEach(
            b -> {
              sheet.append("L1,").append(b.id()).append(",,yes,\n");
              b.pieces().stream()
                  .limit(2)
                  .forEach(
                      p ->
                          sheet
                              .append("L1,,")
                              .append(p.mark())
                              .append(",damaged,\"split, wet\"\n"));
            });
    Path list = dir.resolve("ticked.csv");
    Spoiling.ofText(
        "ticked",
        sheet + "L1,X9,,extra,3 timbers\n",
        input -> {
          Files.write(list, input);
          assertThat(TickedSheet.read(list, delivery, "L1")).isNotNull();
        });
  }

  private static byte[] bytes(String list) {
    try {
      return Files.readAllBytes(DEMO.resolve("lists").resolve(list));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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

  /** A spreadsheet with one of its packed files spoilt. */
  private static byte[] repacked(byte[] bytes, Random random) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int spoilt = random.nextInt(12);
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes));
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.setLevel(1);
      int number = 0;
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] content = in.readAllBytes();
        boolean sheet = entry.getName().contains("sheet") || entry.getName().contains("haredS");
        boolean chosen = spoilt == number++ || (sheet && random.nextInt(3) == 0);
        zip.putNextEntry(new ZipEntry(entry.getName()));
        zip.write(
            chosen
                ? Mutator.mutated(new String(content, StandardCharsets.UTF_8), random)
                : content);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
