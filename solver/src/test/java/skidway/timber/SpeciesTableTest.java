package skidway.timber;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpeciesTableTest {

  @ParameterizedTest
  @CsvSource({
    "eastern white pine, 0.34, 8.2",
    "lodgepole pine, 0.38, 11.1",
    "douglas-fir (coast), 0.45, 12.4",
    "white oak, 0.60, 16.3"
  })
  void holdsTheHandbookValues(String name, double basic, double shrinkagePct) {
    assertThat(SpeciesTable.find(name))
        .hasValueSatisfying(
            species -> {
              assertThat(species.gravity()).isEqualTo(SpecificGravity.basic(basic));
              assertThat(species.volumetricShrinkagePct()).hasValue(shrinkagePct);
            });
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Western Redcedar", "western red cedar", "WESTERN RED-CEDAR", " western redcedar"})
  void findsNamesAsPeopleWriteThem(String name) {
    assertThat(SpeciesTable.find(name).map(Species::name)).contains("western redcedar");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Douglas-fir", "pine", "", "123"})
  void doesNotGuessWhichSpeciesIsMeant(String name) {
    assertThat(SpeciesTable.find(name)).isEmpty();
  }

  @Test
  void leavesShrinkageOpenWhereItWasNotRead() {
    assertThat(SpeciesTable.find("western redcedar").orElseThrow().volumetricShrinkagePct())
        .isEmpty();
  }

  /** The two tables contradict each other for it; one column is used, and it is the heavier. */
  @Test
  void takesWhiteSpruceFromOneTable() {
    assertThat(SpeciesTable.find("white spruce"))
        .hasValueSatisfying(
            species -> assertThat(species.gravity()).isEqualTo(SpecificGravity.basic(0.37)));
  }

  @Test
  void everyNameFindsItsOwnPlausibleSpecies() {
    assertThat(SpeciesTable.names())
        .hasSize(22)
        .doesNotHaveDuplicates()
        .allSatisfy(
            name -> {
              Species species = SpeciesTable.find(name).orElseThrow();
              assertThat(species.name()).isEqualTo(name);
              assertThat(species.gravity().value()).isBetween(0.25, 0.65);
              assertThat(species.volumetricShrinkagePct().orElse(10)).isBetween(5.0, 18.0);
            });
  }
}
