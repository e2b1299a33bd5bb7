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
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
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

  /** Rows of a list that are kept, so that many inputs are soon read; and the last. */
  private static final int ROWS = 14;

  @TempDir private Path dir = Path.of("");

  /**
   * Texts byte by byte; as a packed file of which a byte is spoilt seldom gets past the unpacking,
   * most workbooks are spoilt inside.
   */
  @Test
  void listsOfAllKinds() throws IOException {
    byte[] feet = shortText("feet-and-inches.csv");
    byte[] millimetres = shortText("millimetres.csv");
    byte[] counts = shortWorkbook("counts.xlsx");
    byte[] marks = shortWorkbook("marks.xlsx");
    Wishes ofFeet = wishes(Optional.of("L1"), Map.of("moisture", "19"), Map.of());
    Wishes german =
        wishes(Optional.of("L1"), Map.of(), Map.of("Weymouthskiefer", "eastern white pine"));
    Wishes ofMarks = wishes(Optional.of("L1"), Map.of(), Map.of());
    Spoiling.atOnce(
        List.of(
            share("l-house", "feet", feet, ofFeet, SpoiledListsTest::spoilt),
            share("cabin", "millimetres", millimetres, german, SpoiledListsTest::spoilt),
            share("cabin", "counts", counts, Wishes.NONE, SpoiledListsTest::spoiltInside),
            share(
                "cabin",
                "marks",
                marks,
                ofMarks,
                (list, random) ->
                    random.nextInt(4) == 0 ? spoilt(list, random) : spoiltInside(list, random))));
  }

  /** A list that is read into a job without timbers, in a folder of its own; it is sound itself. */
  private Spoiling.Share share(
      String demo,
      String name,
      byte[] sound,
      Wishes wishes,
      BiFunction<byte[], Random, byte[]> spoilt)
      throws IOException {
    Path folder = Files.createDirectory(dir.resolve(name));
    for (String file : List.of("job.json", "site.json", "loads.csv")) {
      Files.copy(DEMO.resolve(demo).resolve(file), folder.resolve(file));
    }
    JobDraft job = JobDraft.open(folder);
    Path list = folder.resolve("list");
    Spoiling.Reader reader =
        input -> {
          Files.write(list, input);
          Intake intake = new Intake(Reading.open(job, list, wishes));
          assertThat(intake.columns()).isNotEmpty();
          intake.take();
        };
    reader.read(sound);
    return new Spoiling.Share(name, random -> spoilt.apply(sound, random), reader);
  }

  private static Wishes wishes(
      Optional<String> load, Map<String, String> constants, Map<String, String> calls) {
    return new Wishes(
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Map.of(),
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        constants,
        calls,
        load,
        Optional.empty(),
        Optional.empty(),
        false);
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

  private static byte[] shortText(String list) throws IOException {
    return shortened(new String(bytes(list), StandardCharsets.ISO_8859_1), "(?<=\n)")
        .getBytes(StandardCharsets.ISO_8859_1);
  }

  private static byte[] shortWorkbook(String list) throws IOException {
    return repacked(
        bytes(list),
        (name, content) ->
            name.contains("sheet1")
                ? shortened(new String(content, StandardCharsets.UTF_8), "(?=<row )")
                    .getBytes(StandardCharsets.UTF_8)
                : content);
  }

  private static byte[] bytes(String list) throws IOException {
    return Files.readAllBytes(DEMO.resolve("lists").resolve(list));
  }

  private static String shortened(String text, String between) {
    List<String> rows = Arrays.asList(text.split(between, -1));
    assertThat(rows).hasSizeGreaterThan(2 * ROWS);
    return String.join("", rows.subList(0, ROWS)) + rows.get(rows.size() - 1);
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

  /** A spreadsheet with one of its packed files spoilt, and often its sheet or its texts. */
  private static byte[] spoiltInside(byte[] bytes, Random random) {
    int spoilt = random.nextInt(12);
    int[] number = {0};
    return repacked(
        bytes,
        (name, content) -> {
          boolean sheet = name.contains("sheet") || name.contains("haredS");
          boolean chosen = spoilt == number[0]++ || (sheet && random.nextInt(3) == 0);
          return chosen
              ? Mutator.mutated(new String(content, StandardCharsets.UTF_8), random)
              : content;
        });
  }

  /** A packed file with each of its files changed, by its name and content. */
  private static byte[] repacked(byte[] bytes, BiFunction<String, byte[], byte[]> change) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes));
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.setLevel(1);
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        zip.putNextEntry(new ZipEntry(entry.getName()));
        zip.write(change.apply(entry.getName(), in.readAllBytes()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
