package skidway.limits;

import java.util.OptionalDouble;
import skidway.site.Grip;
import skidway.site.Machine;
import skidway.timber.Bundle;

/**
 * How wide a lane a machine needs with a bundle: its own width or that of what it carries, and room
 * beside it. The figures come from an OSHA letter of 15 May 1972, withdrawn since, which recommends
 * 3 ft more and never less than 4 ft; 29 CFR 1910.176(a) asks for safe clearance without a figure.
 *
 * @param clearanceM room beside machine and load, both sides together
 * @param leastM of any lane
 */
public record TravelWidth(double clearanceM, double leastM) {

  /** Metres; nothing is known where nobody said how the machine holds a bundle. */
  public OptionalDouble neededM(Machine machine, Bundle bundle) {
    OptionalDouble loadM = loadM(machine.grip(), bundle);
    if (loadM.isEmpty()) {
      return OptionalDouble.empty();
    }
    double widestM = Math.max(machine.widthM().orElse(0), loadM.getAsDouble());
    return OptionalDouble.of(Math.max(leastM, widestM + clearanceM));
  }

  /** How wide a bundle travels: crosswise on forks, lengthwise in slings. */
  private static OptionalDouble loadM(Grip grip, Bundle bundle) {
    if (grip instanceof Grip.Forks) {
      return OptionalDouble.of(bundle.lengthM());
    }
    return grip instanceof Grip.Slings
        ? OptionalDouble.of(bundle.widthM())
        : OptionalDouble.empty();
  }
}
