package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.paper.Foot;
import skidway.paper.Ink;
import skidway.paper.Press;
import skidway.paper.SeenPdf;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.testkit.BundleBuilder;
import skidway.timber.Bundle;
import skidway.timber.Delivery;

/**
 * A packet of 300 bundles and 2,400 pieces on a site 200 m long is pressed in 600 MB: a bundle of
 * 60 pieces, one with a very long id, a stack of 40.
 */
@Tag("long")
class LargePacketTest {
  private static final int BUNDLES = 300;
  private static final int HIGHEST = 40;
  private static final String LONG_ID = "N000-" + "OF-THE-NORTH-GABLE-".repeat(6);

  @TempDir private Path dir = Path.of("");

  @Test
  void isPressedWithinAHeapAndNothingIsMissingOrPrintedOver()
      throws IOException, InterruptedException {
    Path pdf = dir.resolve("packet.pdf");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx600m",
                "-cp",
                System.getProperty("java.class.path"),
                LargePacketTest.class.getName(),
                pdf.toString())
            .inheritIO()
            .start();
    assertThat(process.waitFor()).isZero();
    byte[] bytes = Files.readAllBytes(pdf);
    Ink ink = Ink.of(bytes);
    assertThat(ink.beyond(9, PaperSize.LETTER.widthMm())).isEmpty();
    assertThat(ink.over()).isEmpty();
    List<String> pages = SeenPdf.of(bytes).pages();
    List<String> signs = pages.stream().filter(LargePacketTest::isSign).toList();
    assertThat(signs).hasSize(BUNDLES - HIGHEST + HIGHEST / SignSheet.MOST_TIERS);
    // No sign goes on on a page that does not say whose it is; the last page is the placard.
    assertThat(pages.subList(pages.indexOf(signs.get(0)), pages.size() - 1)).isEqualTo(signs);
    String all = String.join("\n", signs).replaceAll("\\s", "");
    for (int i = 0; i < BUNDLES; i++) {
      // The long id goes on in further lines, the weight beside it between them.
      assertThat(all).as("signs").containsOnlyOnce(id(i).substring(0, 4));
    }
  }

  private static boolean isSign(String page) {
    return page.contains("whole stack");
  }

  /** Presses it; a process of its own shows what room that takes. */
  public static void main(String[] args) throws IOException {
    Task task = task();
    StyledPage page =
        Packet.page(
            task,
            plan(task),
            Optional.empty(),
            "f",
            SampleAudit.nothing(),
            EnumSet.complementOf(EnumSet.of(Part.MAP)),
            PaperSize.LETTER,
            List.of());
    Foot foot = new Foot("a plan", "a caution", 9);
    Files.write(
        Path.of(args[0]), Press.with(Optional.empty()).press(page.forPdf(), foot, 1).bytes());
  }

  private static String id(int i) {
    return i == 0 ? LONG_ID : String.format(Locale.ROOT, "N%03d", i);
  }

  private static Task task() {
    Task site = UglySite.task("Long hall", BUNDLES);
    List<Bundle> bundles = new ArrayList<>();
    for (int i = 0; i < BUNDLES; i++) {
      BundleBuilder bundle = BundleBuilder.aBundle(id(i)).load("load " + i % 7, i / 7 + 1);
      for (int k = 0; k < (i == 1 ? 60 : 8); k++) {
        bundle.piece("<b>W</b>", 1 + (i * 8 + k) / 6 + (i > 1 ? 9 : 0), 1 + (i * 8 + k) % 6, 2);
      }
      bundles.add(bundle.size(4.8, 0.9, 0.4).weighing(700).build());
    }
    return new Task(
        site.jobName(),
        site.site(),
        new Delivery(site.delivery().loads(), bundles),
        site.settings(),
        site.figures());
  }

  private static Plan plan(Task task) {
    Plan plan = UglySite.plan("Long hall", BUNDLES);
    List<Stack> stacks = new ArrayList<>();
    stacks.add(
        new Stack(
            plan.stacks().get(0).spot(),
            IntStream.range(0, HIGHEST).mapToObj(i -> id(i)).toList()));
    for (int i = HIGHEST; i < BUNDLES; i++) {
      stacks.add(new Stack(plan.stacks().get(i).spot(), List.of(id(i))));
    }
    return new Plan(
        task.jobName(),
        1,
        "",
        "",
        plan.search(),
        stacks,
        List.of(),
        SampleSteps.of(task, stacks, plan.stacks().get(1).spot()),
        List.of(),
        List.of(),
        plan.effort(),
        List.of(),
        List.of());
  }
}
