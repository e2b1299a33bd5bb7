package skidway.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class QuantitiesTest {
  private static final double INCH = 0.0254;
  private final Quantities us = new Quantities(UnitSystem.US);
  private final Quantities metric = new Quantities(UnitSystem.METRIC);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "16'-4 1/2\" | 196.5",
        "16' 4\"     | 196",
        "16'4        | 196",
        "16' - 4-1/2\" | 196.5",
        "16’ 4½”     | 196.5",
        "16′4″       | 196",
        "16 ft 4 in  | 196",
        "6'-8''      | 80",
        "-1'-4 1/2\" | -16.5",
        "4-1/2\"     | 4.5",
        "¾\"         | 0.75",
        "3/4 in      | 0.75",
        "8 in        | 8",
        "4.25\"      | 4.25",
        "12 ft       | 144",
        "12'         | 144",
        "12.5 feet   | 150",
        "12          | 144",
        "0           | 0",
        ".5          | 6",
        "2.54 cm     | 1",
        "25.4mm      | 1",
        "0.0254 M    | 1",
      })
  void readsLengths(String text, double inches) {
    assertThat(us.length(text)).isCloseTo(inches * INCH, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 4.99, 4.99",
    "LENGTH, 4990 mm, 4.99",
    "LENGTH, 499 cm, 4.99",
    "LENGTH, -3, -3",
    "MASS, 950 lb, 430.912751",
    "MASS, 950 lbs, 430.912751",
    "MASS, 1.5 t, 1500",
    "MASS, 12, 12",
    "PRESSURE, 60 psf, 2.872816",
    "PRESSURE, 2.9 kPa, 2.9",
    "PRESSURE, 300 kg/m2, 2.941995",
    "PRESSURE, 300 kg/m², 2.941995",
    "SPEED, 4 ft/s, 1.2192",
    "SPEED, 3 mph, 1.341120",
    "SPEED, 3.6 km/h, 1",
    "DURATION, 3 min, 180",
    "DURATION, 1.5 h, 5400",
    "DURATION, 90, 90",
    "RATIO, 0.6, 0.6",
    "RATIO, 60 %, 0.6",
    "ANGLE, -90°, -90",
    "COUNT, 3, 3",
  })
  void readsMetricJobs(Measure measure, String text, double si) {
    assertThat(metric.read(measure, text)).isCloseTo(si, within(1e-5));
  }

  @Test
  void countsBareNumbersInTheJobsUnit() {
    assertThat(us.read(Measure.MASS, "100")).isCloseTo(45.359, within(0.001));
    assertThat(us.read(Measure.PRESSURE, "60")).isCloseTo(2.8728, within(0.001));
    assertThat(us.bare(Measure.LENGTH, 10)).isCloseTo(3.048, within(1e-12));
    assertThat(metric.bare(Measure.LENGTH, 10)).isEqualTo(10);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", " ", "3 stone", "NaN", "Infinity", "1e3", "4,99 m", "4,990 mm", "16'-14\"", "16.5' 4\"",
        "4 5/4\"", "1/0\"", "4.5 1/2\"", "--4", "4 m 5", "m", "'", "0x10", "١٢", "12 1/2"
      })
  void refusesWhatIsNoLength(String text) {
    assertThatThrownBy(() -> us.length(text))
        .isInstanceOf(UnreadableQuantity.class)
        .hasMessageContaining("a length is a number in feet or text such as 16'-4 1/2\" or 4.99 m");
  }

  @Test
  void saysWhatWasFoundAndWhatIsAllowed() {
    UnreadableQuantity e =
        catchThrowableOfType(UnreadableQuantity.class, () -> us.length("3 stone"));
    assertThat(e.found()).isEqualTo("\"3 stone\" as length");
    UnreadableQuantity comma =
        catchThrowableOfType(UnreadableQuantity.class, () -> metric.length("4,99 m"));
    assertThat(comma.allowed()).endsWith("with a point and no comma");
  }

  @Test
  void quotesOnlyTheBeginningOfAbsurdTexts() {
    UnreadableQuantity e =
        catchThrowableOfType(UnreadableQuantity.class, () -> us.length("9".repeat(10_000)));
    assertThat(e.getMessage()).contains("(10000 characters)").hasSizeLessThan(250);
  }

  @ParameterizedTest
  @CsvSource({
    "MASS, -1",
    "PRESSURE, -1 psf",
    "SPEED, -1",
    "DURATION, -1 s",
    "RATIO, -5 %",
    "COUNT, -1"
  })
  void refusesNegativeQuantities(Measure measure, String text) {
    assertThatThrownBy(() -> us.read(measure, text)).isInstanceOf(UnreadableQuantity.class);
  }

  @Test
  void refusesPartsOfACountAndNumbersThatAreNone() {
    assertThatThrownBy(() -> us.read(Measure.COUNT, "1.5")).isInstanceOf(UnreadableQuantity.class);
    assertThatThrownBy(() -> us.bare(Measure.LENGTH, Double.NaN))
        .isInstanceOf(UnreadableQuantity.class);
    assertThatThrownBy(() -> us.bare(Measure.MASS, Double.POSITIVE_INFINITY))
        .isInstanceOf(UnreadableQuantity.class);
  }

  @Property(seed = "20310505", tries = 300)
  void readsBackWhatFiguresWrite(@ForAll @DoubleRange(min = -300, max = 300) double metres) {
    String feet = new Figures(UnitSystem.US).length(metres);
    assertThat(us.length(feet)).isCloseTo(metres, within(INCH / 4 + 1e-9));
    assertThat(metric.length(feet)).isCloseTo(metres, within(INCH / 4 + 1e-9));
    String metre = new Figures(UnitSystem.METRIC).length(metres);
    assertThat(us.length(metre)).isCloseTo(metres, within(0.005 + 1e-9));
  }

  @Property(seed = "20310505", tries = 500)
  void givesANumberOrAMessageForAnyText(
      @ForAll Measure measure, @ForAll @StringLength(max = 80) String text) {
    numberOrMessage(measure, text);
  }

  @Property(seed = "20310505", tries = 500)
  void givesANumberOrAMessageForAlmostLengths(@ForAll("nearLengths") String text) {
    numberOrMessage(Measure.LENGTH, text);
  }

  @Provide
  Arbitrary<String> nearLengths() {
    return Arbitraries.strings().withChars("0123456789.,-/ '\"½¾’”ftinmc").ofMaxLength(20);
  }

  private void numberOrMessage(Measure measure, String text) {
    try {
      assertThat(us.read(measure, text)).isFinite();
    } catch (UnreadableQuantity e) {
      assertThat(e.getMessage()).startsWith("found ").contains(" as " + measure.word() + "; ");
    }
  }
}
