package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineBandTest {
  /** 29 CFR 1926.1408 Table A (cfr.laws-info.com, seen): upper bounds belong to their band. */
  @ParameterizedTest
  @CsvSource({
    "120, 10",
    "50000, 10",
    "50001, 15",
    "200000, 15",
    "200001, 20",
    "350000, 20",
    "350001, 25",
    "500000, 25",
    "500001, 35",
    "750000, 35",
    "750001, 45",
    "1000000, 45"
  })
  void agreesWithTableA(double volts, double feet) {
    assertThat(LineBand.of(volts).orElseThrow().clearanceM())
        .isCloseTo(feet * 0.3048, within(1e-9));
  }

  @Test
  void aboveOneThousandKilovoltsTheOwnerSays() {
    assertThat(LineBand.of(1_000_001)).isEmpty();
    assertThat(LineBand.TO_1000_KV.upperVolts()).isEqualTo(1_000_000);
  }

  /** An older table in circulation asks for 25 ft at 345 kV and 35 ft at 500 kV. */
  @ParameterizedTest
  @CsvSource({"345000, 25", "500000, 35"})
  void isNotTheOlderTable(double volts, double olderFeet) {
    assertThat(LineBand.of(volts).orElseThrow().clearanceM()).isLessThan((olderFeet - 1) * 0.3048);
  }
}
