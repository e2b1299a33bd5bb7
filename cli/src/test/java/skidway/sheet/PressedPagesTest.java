package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import skidway.audit.AuditReport;
import skidway.paper.Foot;
import skidway.paper.Ink;
import skidway.paper.Press;
import skidway.plan.Plan;
import skidway.plan.Task;

/** Nothing on the printed pages is cut off by their edges or printed over something else. */
class PressedPagesTest {
  private static final Foot FOOT = new Foot("a plan", "a caution", 9);

  /** The parts whose lines break in most ways. */
  @Test
  void noLetterOfAListIsCutOffOrPrintedOver() {
    noneIsCutOffOrPrintedOver(EnumSet.of(Part.SET_OUT, Part.SETTLE, Part.STACKS));
  }

  @Test
  @Tag("long")
  void noLetterOfThePacketIsCutOffOrPrintedOver() {
    // Maps have their own tests, and pages that lie.
    noneIsCutOffOrPrintedOver(EnumSet.complementOf(EnumSet.of(Part.MAP)));
  }

  private static void noneIsCutOffOrPrintedOver(Set<Part> parts) {
    Task task = SampleHouse.task();
    Plan plan = SampleHouse.plan();
    StyledPage page =
        Packet.page(
            task, plan, Optional.empty(), "f", longWinded(), parts, PaperSize.LETTER, List.of());
    Ink ink = pressed(page);
    assertThat(ink.beyond(9, PaperSize.LETTER.widthMm())).isEmpty();
    assertThat(ink.over()).isEmpty();
  }

  /** What is left to people fills more than a line, broken in many ways. */
  private static AuditReport longWinded() {
    AuditReport report = SampleAudit.report();
    return new AuditReport(
        report.findings(),
        report.margins(),
        IntStream.range(0, 12)
            .mapToObj(i -> "Not checked: " + "a".repeat(i) + " barricade by the gate".repeat(12))
            .toList(),
        report.effort(),
        report.stackMargins(),
        report.pieceMargins(),
        report.notes());
  }

  @Test
  @Tag("long")
  void noLetterOfATagIsCutOffOrPrintedOver() {
    for (int perPage : List.of(2, 8)) {
      TagSheet format = new TagSheet(PaperSize.LETTER, perPage);
      StyledPage page = TagPage.of(SampleHouse.task(), SampleHouse.plan(), "f", List.of(), format);
      Ink ink = pressed(page);
      assertThat(ink.beyond(8, PaperSize.LETTER.widthMm())).isEmpty();
      assertThat(ink.over()).as(perPage + " tags").isEmpty();
    }
  }

  private static Ink pressed(StyledPage page) {
    return Ink.of(Press.with(Optional.empty()).press(page.forPdf(), FOOT, 1).bytes());
  }
}
