package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.site.ChartRow;
import skidway.site.Grip;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;

final class MachineRemarksTest {
  private static List<String> of(Grip grip) {
    return MachineRemarks.of(Machines.over(grip), false);
  }

  @Test
  void aWholeMachineNeedsNoRemark() {
    assertThat(of(Machines.slings(60, 500))).isEmpty();
    assertThat(of(Machines.forks(0.6))).isEmpty();
  }

  @Test
  void whatNobodyToldOfTheGripIsSaid() {
    assertThat(of(new Grip.Unstated()))
        .containsExactly("Not checked: load centre, slings and travel width of crane; needs grip.");
    assertThat(of(new Grip.Forks(OptionalDouble.empty())))
        .containsExactly("Not checked: the load centre of crane; needs loadCentre.");
    assertThat(of(new Grip.Slings(OptionalDouble.empty(), OptionalDouble.of(500))))
        .containsExactly(
            "Not checked: the angle of the slings and their pull of crane; needs angle.");
    assertThat(of(new Grip.Slings(OptionalDouble.of(60), OptionalDouble.empty())))
        .containsExactly("Not checked: the pull in the slings of crane; needs leg.");
  }

  @Test
  void widthAndConfirmationAreAskedFor() {
    Machine bare =
        new Machine(
            "crane",
            List.of(new MachineStand("M", new Point(0, 0), "L")),
            List.of(new ChartRow(10, 1000)),
            Machines.forks(0.6),
            OptionalDouble.empty(),
            0,
            "");
    assertThat(MachineRemarks.of(bare, true))
        .containsExactly(
            "Not checked: the machine's own width on its lanes of crane; needs width.",
            "Not checked: the load chart against the plate of crane; needs confirmedBy.");
  }

  @Test
  void aStandWithoutALaneIsSaidWhereThereAreLanes() {
    Machine crane = Machines.over(Machines.slings(60, 500));
    assertThat(MachineRemarks.of(crane, true))
        .anyMatch(r -> r.startsWith("Not checked: the width of the way to stand "));
  }
}
