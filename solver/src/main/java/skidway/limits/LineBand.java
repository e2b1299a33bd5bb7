package skidway.limits;

import java.util.Arrays;
import java.util.Optional;

/**
 * The voltage bands of 29 CFR 1926.1408 Table A with the clearance of each. An older table in
 * circulation has other figures. Above the last band the owner of the line says.
 */
public enum LineBand {
  TO_50_KV(50_000, 3.048),
  TO_200_KV(200_000, 4.572),
  TO_350_KV(350_000, 6.096),
  TO_500_KV(500_000, 7.62),
  TO_750_KV(750_000, 10.668),
  TO_1000_KV(1_000_000, 13.716);

  private final double upperVolts;
  private final double clearanceM;

  LineBand(double upperVolts, double clearanceM) {
    this.upperVolts = upperVolts;
    this.clearanceM = clearanceM;
  }

  /** The band of a nominal alternating voltage; none above 1000 kV. */
  public static Optional<LineBand> of(double volts) {
    return Arrays.stream(values()).filter(band -> volts <= band.upperVolts).findFirst();
  }

  /** The highest voltage of the band, which is still part of it. */
  public double upperVolts() {
    return upperVolts;
  }

  /** Clearance in the table, metres. */
  public double clearanceM() {
    return clearanceM;
  }
}
