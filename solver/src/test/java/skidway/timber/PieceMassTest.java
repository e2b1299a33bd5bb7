package skidway.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PieceMassTest {
  private static final Species PINE = SpeciesTable.find("eastern white pine").orElseThrow();

  @Test
  void isVolumeTimesDensity() {
    Piece piece = piece(new Section(0.15, 0.2, 1), OptionalDouble.empty());
    assertThat(piece.mass().likelyKg())
        .isCloseTo(0.15 * 0.2 * 4 * WoodDensity.kgPerM3(PINE, 19), within(1e-9));
  }

  @Test
  void countsOnlyTheWoodInARoundLog() {
    double square = piece(new Section(0.2, 0.2, 1), OptionalDouble.empty()).mass().likelyKg();
    double round =
        piece(new Section(0.2, 0.2, Math.PI / 4), OptionalDouble.empty()).mass().likelyKg();
    assertThat(round / square).isCloseTo(Math.PI / 4, within(1e-9));
  }

  @Test
  void isTheWeighedOneWhereSomebodyWeighedIt() {
    Piece light = piece(new Section(0.15, 0.2, 1), OptionalDouble.of(41.5));
    assertThat(light.mass().likelyKg()).isEqualTo(41.5);
    Bundle computed = bundle(light, OptionalDouble.empty());
    Bundle weighed = bundle(light, OptionalDouble.of(90));
    assertThat(computed.mass().likelyKg()).isEqualTo(83.0);
    assertThat(weighed.mass().likelyKg()).isEqualTo(90);
  }

  private static Bundle bundle(Piece twice, OptionalDouble weighedKg) {
    List<PackedPiece> packed = List.of(new PackedPiece(twice, 1), new PackedPiece(twice, 2));
    return new Bundle("B1", "L1", 1, 4, 0.2, 0.4, weighedKg, packed);
  }

  private static Piece piece(Section section, OptionalDouble weighedKg) {
    return new Piece(
        "W1-01-1",
        "W1",
        1,
        1,
        OptionalDouble.empty(),
        4,
        section,
        PINE,
        Moisture.of(19),
        weighedKg);
  }
}
