package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import skidway.paper.Foot;
import skidway.paper.Press;
import skidway.plan.Plan;
import skidway.plan.Task;

class PacketInPdfTest {
  /** The page layer refuses lists whose items it takes for something else. */
  @Test
  void aPacketWithARackCanBePressed() {
    Task task = SampleHouse.task();
    Plan plan = SampleHouse.plan();
    assertThat(StackView.of(task, plan)).anyMatch(StackView::rack);
    List<MapSheet> map = StackMap.sheets(task, plan, "f", PaperSize.LETTER);
    StyledPage page =
        Packet.page(
            task,
            plan,
            Optional.empty(),
            "f",
            SampleAudit.nothing(),
            EnumSet.allOf(Part.class),
            PaperSize.LETTER,
            map);
    Foot foot = new Foot("a plan", "a caution", 9);
    assertThat(Press.with(Optional.empty()).press(page.forPdf(), foot, 1).pages())
        .isGreaterThan(map.size());
  }
}
