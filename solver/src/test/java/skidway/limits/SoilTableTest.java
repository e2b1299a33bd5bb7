package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SoilTableTest {
  private static final double KPA_PER_PSF = 0.0478803;

  /** IBC 2012 Table 1806.2. */
  @ParameterizedTest
  @CsvSource({
    "crystalline bedrock, 12000",
    "sedimentary rock, 4000",
    "gravel, 3000",
    "sand, 2000",
    "clay, 1500"
  })
  void knowsThePresumptiveValues(String name, double psf) {
    assertThat(SoilTable.find(name).orElseThrow().kpa().getAsDouble())
        .isCloseTo(psf * KPA_PER_PSF, within(0.001));
  }

  @ParameterizedTest
  @ValueSource(strings = {"topsoil", "fill", "mud", "peat", "organic"})
  void assumesNothingOfWhatTheTableExcludes(String name) {
    assertThat(SoilTable.find(name).orElseThrow().kpa()).isEmpty();
  }

  @Test
  void takesNamesAsPeopleWriteThem() {
    assertThat(SoilTable.find(" Crystalline-Bedrock "))
        .isPresent()
        .isEqualTo(SoilTable.find("crystalline bedrock"));
    assertThat(SoilTable.find("swamp")).isEmpty();
    assertThat(SoilTable.all()).hasSize(10);
  }
}
