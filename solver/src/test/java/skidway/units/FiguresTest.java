package skidway.units;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.units.UnitSystem.METRIC;
import static skidway.units.UnitSystem.US;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How quantities are written. */
class FiguresTest {
  /** A no-break space stands as an underscore here; factors from memory, exact by definition. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          LENGTH   | 0.1     | 4"           | 0.10 m
          LENGTH   | 4.9911  | 16'-4 1/2"   | 4.99 m
          LENGTH   | 609.6   | 2,000'-0"    | 609.60 m
          LENGTH   | 1234.5  | 4,050'-2 1/2" | 1_234.50 m
          MASS     | 453     | 999 lb       | 453 kg
          MASS     | 1234567 | 2,721,754 lb | 1_234_567 kg
          PRESSURE | 47.78   | 998 psf      | 47.8 kPa
          PRESSURE | 47.88   | 1,000 psf    | 47.9 kPa
          PRESSURE | 1914.5  | 39,985 psf   | 1_914.5 kPa
          FORCE    | 4448222 | 1,000,000 lb | 4_448.22 kN
          MOMENT   | 1355818 | 1,000,000 lb ft | 1_355.82 kN m
          DURATION | 3600    | 3,600 s      | 3_600 s
          COUNT    | 12000   | 12000        | 12000
          VOLTAGE  | 500000  | 500 kV       | 500 kV
          """)
  void thousandsAreSetApart(Measure measure, double si, String us, String metric) {
    assertThat(new Figures(US).of(measure, si)).isEqualTo(us);
    assertThat(new Figures(METRIC).of(measure, si)).isEqualTo(metric.replace('_', '\u00a0'));
  }

  @ParameterizedTest
  @EnumSource
  void aSpreadsheetTakesTheBareNumber(UnitSystem units) {
    Figures figures = new Figures(units);
    double perUnit = units == US ? Customary.KG_PER_POUND : 1;
    assertThat(Figures.number(figures.mass(1_234_567 * perUnit))).isEqualTo("1234567");
    assertThat(Figures.number(figures.mass(12 * perUnit))).isEqualTo("12");
  }
}
