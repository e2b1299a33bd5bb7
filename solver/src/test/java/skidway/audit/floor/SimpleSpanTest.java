package skidway.audit.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

final class SimpleSpanTest {
  @ParameterizedTest
  @CsvFileSource(resources = "beams.csv", numLinesToSkip = 3)
  void publishedBeamsComeOut(
      double span, String loads, double left, double right, double moment, String source) {
    SimpleSpan beam =
        new SimpleSpan(span, Stream.of(loads.split(" ", -1)).map(this::load).toList());
    assertThat(beam.leftN()).as(source).isCloseTo(left, within(1e-9));
    assertThat(beam.rightN()).as(source).isCloseTo(right, within(1e-9));
    assertThat(beam.shearN()).as(source).isEqualTo(Math.max(beam.leftN(), beam.rightN()));
    assertThat(beam.momentNm()).as(source).isCloseTo(moment, within(1e-9 * moment));
  }

  private EvenLoad load(String text) {
    String[] parts = text.split("\\.\\.|=", -1);
    return new EvenLoad(
        Double.parseDouble(parts[0]), Double.parseDouble(parts[1]), Double.parseDouble(parts[2]));
  }

  @Test
  void theWorstMomentMayLieBetweenTwoLoadsThatOverlap() {
    SimpleSpan span = new SimpleSpan(4, List.of(new EvenLoad(0, 2, 20), new EvenLoad(1, 3, 10)));
    assertThat(span.leftN()).isEqualTo((20 * 3 + 10 * 2) / 4.0);
    // From 0 to 1 m 10 N/m, to 2 m 15 N/m: shear 10 at 1 m, nil at 1 + 10 / 15.
    double zeroM = 1 + 10.0 / 15;
    double beneath = 10 * zeroM * zeroM / 2 + 5 * (zeroM - 1) * (zeroM - 1) / 2;
    assertThat(span.momentNm()).isCloseTo(20 * zeroM - beneath, within(1e-12));
  }

  @Property(seed = "20310505")
  void noPlaceOnTheSpanIsWorseThanTheWorst(
      @ForAll @DoubleRange(min = 0, max = 4) double a,
      @ForAll @DoubleRange(min = 0, max = 4) double b,
      @ForAll @DoubleRange(min = 0, max = 4) double point,
      @ForAll @DoubleRange(min = 0, max = 900) double newtons) {
    SimpleSpan span =
        new SimpleSpan(
            4,
            List.of(
                new EvenLoad(Math.min(a, b), Math.max(a, b), newtons), EvenLoad.point(point, 300)));
    double worst = span.momentNm();
    for (int i = 0; i <= 400; i++) {
      assertThat(span.momentAtNm(i / 100.0)).isLessThanOrEqualTo(worst + 1e-9);
    }
    assertThat(span.momentAtNm(4)).isCloseTo(0, within(1e-9));
    assertThat(span.leftN() + span.rightN()).isCloseTo(newtons + 300, within(1e-9));
  }
}
