package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.paper.OddFont;
import skidway.paper.SeenPdf;

class PrintPdfTest {
  @TempDir private Path dir = Path.of("");
  private Path job = Path.of("");

  @BeforeEach
  void plan() {
    job = StagedCabin.copy(dir);
  }

  private SeenPdf pdf(String name) throws IOException {
    return SeenPdf.of(Files.readAllBytes(job.resolve("out").resolve(name)));
  }

  @Test
  void packetAndTagsArePdfsOfThePaperUsualWithTheUnits() throws IOException {
    Shell shell = Shell.run("print", job.toString());
    SeenPdf packet = pdf("packet-001.pdf");
    SeenPdf tags = pdf("tags.pdf");
    assertThat(shell.out())
        .contains("PDF of " + packet.pages().size() + " pages: ")
        .contains("PDF of " + tags.pages().size() + " pages: ");
    size(packet.sizesMm().get(0), 297, 210);
    size(last(packet), 210, 297);
    size(tags.sizesMm().get(0), 210, 297);
    int pages = packet.pages().size();
    for (int i = 0; i < pages; i++) {
      assertThat(packet.pages().get(i))
          .contains("page " + (i + 1) + " of " + pages)
          .contains("Cabin at Fernhollow, revision 1, plan ")
          .contains("Helps to plan.");
    }
    assertThat(packet.loose()).isEmpty();
    assertThat(tags.loose()).isEmpty();
    assertThat(packet.pages().get(0)).contains("Whole site", "map 1 of");
  }

  @Test
  void twoPrintsAreTheSameFile() throws IOException {
    Shell.run("print", job.toString(), "--only", "pull,tags");
    byte[] pull = Files.readAllBytes(job.resolve("out/packet-001-pull-tags.pdf"));
    byte[] tags = Files.readAllBytes(job.resolve("out/tags.pdf"));
    Shell.run("print", job.toString(), "--only", "pull,tags");
    assertThat(Files.readAllBytes(job.resolve("out/packet-001-pull-tags.pdf"))).isEqualTo(pull);
    assertThat(Files.readAllBytes(job.resolve("out/tags.pdf"))).isEqualTo(tags);
  }

  @Test
  void aLargeSheetIsHalvedForTags() throws IOException {
    Shell shell = Shell.run("print", job.toString(), "--paper", "tabloid");
    assertThat(shell.err()).contains("The tags are for letter paper");
    size(pdf("packet-001.pdf").sizesMm().get(0), 431.8, 279.4);
    size(last(pdf("packet-001.pdf")), 279.4, 431.8);
    size(pdf("tags.pdf").sizesMm().get(0), 215.9, 279.4);
  }

  @Test
  void copiesFollowEachOther() throws IOException {
    Shell shell =
        Shell.run("print", job.toString(), "--only", "signs", "--copies", "2", "--paper", "a3");
    SeenPdf signs = pdf("packet-001-signs.pdf");
    int each = signs.pages().size() / 2;
    assertThat(shell.out()).contains("PDF of " + 2 * each + " pages in 2 copies");
    assertThat(signs.pages().get(each)).contains("page 1 of " + each, "copy 2 of 2");
    size(signs.sizesMm().get(0), 297, 420);
  }

  @Test
  void noneIsWrittenWhenNoneIsWanted() {
    Shell shell = Shell.run("print", job.toString(), "--no-pdf");
    assertThat(shell.code()).isEqualTo(ExitCode.FINE);
    assertThat(job.resolve("out/packet-001.html")).exists();
    assertThat(job.resolve("out/packet-001.pdf")).doesNotExist();
    assertThat(job.resolve("out/tags.pdf")).doesNotExist();
  }

  @Test
  void wrongOptionsWriteNothing() throws IOException {
    String font = "--font=" + OddFont.withoutOs2(dir.resolve("damaged.ttf"));
    for (String option :
        List.of("--copies=0", "--copies=21", "--font=none.ttf", font, "--paper=a5")) {
      Shell shell = Shell.run("print", job.toString(), option);
      assertThat(shell.code()).as(option).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(shell.err())
          .contains(option.substring(0, option.indexOf('=')))
          .doesNotContain("at skidway.");
      assertThat(job.resolve("out")).doesNotExist();
    }
  }

  /** Size of the last page; maps may lie or stand, lists stand. */
  private static double[] last(SeenPdf pdf) {
    return pdf.sizesMm().get(pdf.sizesMm().size() - 1);
  }

  private static void size(double[] mm, double wide, double high) {
    assertThat(mm[0]).isCloseTo(wide, within(0.5));
    assertThat(mm[1]).isCloseTo(high, within(0.5));
  }
}
