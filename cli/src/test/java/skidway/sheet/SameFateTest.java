package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.plan.Unplaced;
import skidway.rules.Rule;

class SameFateTest {
  private static Unplaced unplaced(String id, String mass, Rule rule, String cause) {
    return new Unplaced(id, rule, id + " (4 m long, 0.4 m high, " + mass + "): " + cause);
  }

  @Test
  void bundlesWithTheSameCauseAreToldOnce() {
    List<SameFate> fates =
        SameFate.of(
            List.of(
                unplaced("B01", "700 kg", Rule.STACK_HEIGHT, "none is left (stackHeight at 3)."),
                unplaced("B07", "500 kg", Rule.ZONE_LOAD, "none is left (zoneLoad at 3)."),
                unplaced("B02", "650 kg", Rule.STACK_HEIGHT, "none is left (stackHeight at 3)."),
                unplaced("B03", "610 kg", Rule.STACK_HEIGHT, "none is left (stackHeight at 3).")));
    assertThat(fates)
        .extracting(SameFate::sentence)
        .containsExactly(
            "3 bundles (B01 to B03): none is left (stackHeight at 3).",
            "B07 (4 m long, 0.4 m high, 500 kg): none is left (zoneLoad at 3).");
    assertThat(fates.get(0).who()).isEqualTo("B01 to B03");
    assertThat(fates.get(0).rule()).isEqualTo(Rule.STACK_HEIGHT);
  }

  @Test
  void anotherRuleOrAnotherWordIsAnotherFate() {
    assertThat(
            SameFate.of(
                List.of(
                    unplaced("B1", "1 kg", Rule.STACK_HEIGHT, "none is left."),
                    unplaced("B2", "1 kg", Rule.ZONE_LOAD, "none is left."),
                    unplaced("B3", "1 kg", Rule.STACK_HEIGHT, "2 are left."))))
        .hasSize(3);
    assertThat(SameFate.of(List.of())).isEmpty();
  }

  @Test
  void sentencesByHandAreToldAsTheyAre() {
    Unplaced one = new Unplaced("B1", Rule.ZONE_LOAD, "Ask (first): nobody knows.");
    assertThat(SameFate.of(List.of(one)))
        .extracting(SameFate::sentence)
        .containsExactly(one.sentence());
    Unplaced other = new Unplaced("B9", Rule.ZONE_LOAD, "Ask (first): nobody knows.");
    assertThat(SameFate.of(List.of(one, other)).get(0).sentence())
        .isEqualTo("2 bundles (B1, B9): Ask (first): nobody knows.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "B01,B02 | B01, B02",
        "B03,B01,B02 | B01 to B03",
        "B08,B09,B10,B12 | B08 to B10, B12",
        "B8,B9,B10 | B8 to B10",
        "B08,B9,B10 | B08, B9, B10",
        "B09,B010,B011 | B09, B010, B011",
        "A1,B2,C3 | A1, B2, C3",
        "north,south | north, south",
        "1,2,3 | 1 to 3",
        "B-07,B-08,B-09 | B-07 to B-09"
      })
  void onlyIdsThatCountOnBecomeARange(String ids, String words) {
    assertThat(IdRanges.words(List.of(ids.split(",", -1)))).isEqualTo(words);
  }
}
