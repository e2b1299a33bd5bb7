package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import skidway.limits.BeamLoad.Couple;
import skidway.limits.BeamLoad.Force;
import skidway.limits.BeamLoad.Spread;

class BeamTest {
  private static final double METRES_PER_INCH = 0.0254;
  private static final double NEWTONS_PER_POUND = 4.4482216152605;

  /** Relative to the figure printed; sources print four or five digits. */
  private static final double AS_PRINTED = 5e-5;

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "beams.csv", numLinesToSkip = 5)
  void agreesWithPublishedBeams(
      String id,
      String units,
      double start,
      double end,
      double left,
      double right,
      String loads,
      double reactionLeft,
      double reactionRight,
      Double moment,
      Double momentAt,
      String deflections,
      String source) {
    Beam beam = new Beam(start, end, left, right, loads(loads));

    checkPrinted(beam.reactionLeftN(), reactionLeft);
    checkPrinted(beam.reactionRightN(), reactionRight);
    if (moment != null) {
      checkPrinted(beam.greatestMoment().value(), moment);
      checkPrinted(beam.greatestMoment().atM(), momentAt);
    }
    if (deflections != null) {
      for (String deflection : deflections.split("; ", -1)) {
        String[] words = deflection.split(" ", -1);
        checkPrinted(
            beam.deflectionTimesEi(Double.parseDouble(words[0])), Double.parseDouble(words[1]));
      }
    }
  }

  /**
   * Published deflections at midspan under an even load: two of PyNite (5 w L⁴ / 384 E I), one that
   * a program of xcfem/xc prints.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // id, lb/in, span in, E psi, I in4, deflection in
    "B9, 41.666667, 120, 29e6, 200, 0.01940",
    "B10, 16.666667, 168, 29e6, 150, 0.03974",
    "B13, 6.4416667, 192, 1406866, 98.93, 0.818937",
  })
  void agreesWithPublishedDeflections(
      String id, double perInch, double spanIn, double psi, double in4, double deflectionIn) {
    double spanM = spanIn * METRES_PER_INCH;
    double stiffnessNm2 = psi * in4 * NEWTONS_PER_POUND * METRES_PER_INCH * METRES_PER_INCH;
    Spread load = Spread.even(perInch * NEWTONS_PER_POUND / METRES_PER_INCH, 0, spanM);
    Beam beam = Beam.simple(spanM, List.of(load));

    double deflectionM = beam.deflectionTimesEi(spanM / 2) / stiffnessNm2;

    assertThat(deflectionM / METRES_PER_INCH)
        .isCloseTo(deflectionIn, within(deflectionIn * 5 * AS_PRINTED));
  }

  /**
   * A page (mathix.co, beam-loading-16ed41) gives 16 kN m at 3 m as the maximum of 10 kN/m from 1
   * to 3 m on 5 m. That is the moment at the load's end; shear is nil, and the moment greatest, at
   * 1 + 12/10 m.
   */
  @Test
  void theMaximumIsWhereShearIsNilAndNotWhereAPageHasIt() {
    Beam beam = Beam.simple(5, List.of(Spread.even(10, 1, 3)));

    assertThat(beam.momentNm(3)).isCloseTo(16, within(1e-9));
    assertThat(beam.shearN(3)).isCloseTo(-8, within(1e-9));
    assertThat(beam.shearN(2.2)).isCloseTo(0, within(1e-9));
    assertThat(beam.greatestMoment().value()).isCloseTo(19.2, within(1e-9));
    assertThat(beam.greatestMoment().atM()).isCloseTo(2.2, within(1e-9));
    assertThat(beam.greatestMoment().value()).isNotCloseTo(16, within(1.0));
  }

  /** Baker and Haynes, ch. 8: areas 260, 70, 61.25, -211.25, -260, 80 of the shear diagram. */
  @Test
  void momentsAreTheAreasOfTheShearDiagram() {
    Beam beam =
        new Beam(
            0, 24, 0, 20, List.of(new Force(30, 4), Spread.even(10, 6, 16), new Force(20, 24)));

    assertThat(beam.momentNm(4)).isCloseTo(260, within(1e-9));
    assertThat(beam.momentNm(6)).isCloseTo(330, within(1e-9));
    assertThat(beam.momentNm(9.5)).isCloseTo(391.25, within(1e-9));
    assertThat(beam.momentNm(16)).isCloseTo(180, within(1e-9));
    assertThat(beam.momentNm(20)).isCloseTo(-80, within(1e-9));
    assertThat(beam.greatestShear().value()).isCloseTo(65, within(1e-9));
    assertThat(beam.shearN(16)).isCloseTo(-65, within(1e-9));
  }

  /**
   * 3 to 6 kN/m from 3 m on 6 m: shear 2.75 - 3 s - s²/2 is nil at s = 0.8079, right of the couple.
   */
  @Test
  void shearOfAGrowingLoadIsNilAtTheRootOfAParabola() {
    Beam beam = Beam.simple(6, List.of(new Couple(-1.5, 3), new Spread(3, 6, 3, 6)));

    double s = Math.sqrt(9 + 2 * 2.75) - 3;
    assertThat(beam.greatestMoment().atM()).isCloseTo(3 + s, within(1e-9));
    assertThat(beam.greatestMoment().value())
        .isCloseTo(9.75 + 2.75 * s - 1.5 * s * s - s * s * s / 6, within(1e-9));
  }

  @Test
  void aBeamMayBePushedUpAndMustCarryItsLoads() {
    Beam lifted = Beam.simple(4, List.of(new Force(-8, 1)));
    assertThat(lifted.greatestMoment()).isEqualTo(new Beam.Peak(-6, 1));
    assertThat(Beam.simple(4, List.of()).greatestMoment().value()).isZero();
    assertThatThrownBy(() -> Beam.simple(4, List.of(new Force(1, 4.1))))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Beam(0, 4, 1, 4.5, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property(seed = "20310505", tries = 200)
  void reactionsCarryTheLoadsAndPeaksAreNotExceededAnywhere(
      @ForAll @IntRange(max = 1_000_000) int seed, @ForAll @DoubleRange(max = 10) double xM) {
    Beam beam = randomBeam(new Random(seed));
    double loadsN = beam.loads().stream().mapToDouble(load -> load.integral(1, 10)).sum();

    assertThat(beam.reactionLeftN() + beam.reactionRightN()).isCloseTo(loadsN, within(1e-9));
    assertThat(beam.momentNm(10)).isCloseTo(0, within(1e-8));
    assertThat(beam.shearN(10)).isCloseTo(0, within(1e-9));
    assertThat(Math.abs(beam.momentNm(xM)))
        .isLessThanOrEqualTo(Math.abs(beam.greatestMoment().value()) + 1e-8);
    assertThat(Math.abs(beam.shearN(xM)))
        .isLessThanOrEqualTo(Math.abs(beam.greatestShear().value()) + 1e-8);
    assertThat(beam.deflectionTimesEi(beam.leftM())).isCloseTo(0, within(1e-8));
    assertThat(beam.deflectionTimesEi(beam.rightM())).isCloseTo(0, within(1e-8));
  }

  @Property(seed = "20310505", tries = 200)
  void loadsAddUp(
      @ForAll @IntRange(max = 1_000_000) int seed, @ForAll @DoubleRange(max = 10) double xM) {
    Beam all = randomBeam(new Random(seed));
    double momentNm = 0;
    double deflection = 0;
    for (BeamLoad load : all.loads()) {
      Beam alone = new Beam(0, 10, all.leftM(), all.rightM(), List.of(load));
      momentNm += alone.momentNm(xM);
      deflection += alone.deflectionTimesEi(xM);
    }

    assertThat(all.momentNm(xM)).isCloseTo(momentNm, within(1e-7));
    assertThat(all.deflectionTimesEi(xM)).isCloseTo(deflection, within(1e-6));
  }

  @Property(seed = "20310505", tries = 200)
  void aMirroredBeamBendsTheSameMirrored(
      @ForAll @IntRange(max = 1_000_000) int seed, @ForAll @DoubleRange(max = 10) double xM) {
    Beam beam = randomBeam(new Random(seed));
    List<BeamLoad> turned = new ArrayList<>(beam.loads().stream().map(BeamTest::mirror).toList());
    Collections.reverse(turned);
    Beam mirrored = new Beam(0, 10, 10 - beam.rightM(), 10 - beam.leftM(), turned);

    assertThat(mirrored.reactionRightN()).isCloseTo(beam.reactionLeftN(), within(1e-9));
    assertThat(Math.abs(mirrored.greatestMoment().value()))
        .isCloseTo(Math.abs(beam.greatestMoment().value()), within(1e-8));
    assertThat(mirrored.deflectionTimesEi(10 - xM))
        .isCloseTo(beam.deflectionTimesEi(xM), within(1e-6));
  }

  /** Up to seven loads on 10 m, supports somewhere in its two halves. */
  private static Beam randomBeam(Random random) {
    List<BeamLoad> loads = new ArrayList<>();
    for (int i = random.nextInt(8); i > 0; i--) {
      double at = 10 * random.nextDouble();
      double w = 6 * random.nextDouble() - 2;
      loads.add(
          switch (random.nextInt(4)) {
            case 0 -> new Force(w, at);
            case 1 -> new Couple(w, at);
            case 2 -> Spread.even(w, at * random.nextDouble(), at);
            default -> new Spread(w, 6 * random.nextDouble() - 2, at * random.nextDouble(), at);
          });
    }
    return new Beam(0, 10, 4 * random.nextDouble(), 6 + 4 * random.nextDouble(), loads);
  }

  private static BeamLoad mirror(BeamLoad load) {
    if (load instanceof Spread s) {
      return new Spread(s.endNPerM(), s.startNPerM(), 10 - s.toM(), 10 - s.fromM());
    }
    return load instanceof Couple c
        ? new Couple(-c.momentNm(), 10 - c.atM())
        : new Force(((Force) load).forceN(), 10 - load.fromM());
  }

  private static List<BeamLoad> loads(String text) {
    List<BeamLoad> loads = new ArrayList<>();
    for (String load : text.split("; ", -1)) {
      String[] words = load.split(" ", -1);
      double[] numbers = new double[words.length - 1];
      for (int i = 0; i < numbers.length; i++) {
        numbers[i] = Double.parseDouble(words[i + 1]);
      }
      loads.add(
          switch (words[0]) {
            case "force" -> new Force(numbers[0], numbers[1]);
            case "couple" -> new Couple(numbers[0], numbers[1]);
            case "even" -> Spread.even(numbers[0], numbers[1], numbers[2]);
            case "spread" -> new Spread(numbers[0], numbers[1], numbers[2], numbers[3]);
            default -> throw new IllegalArgumentException(load);
          });
    }
    return loads;
  }

  private static void checkPrinted(double value, double printed) {
    assertThat(value).isCloseTo(printed, within(Math.abs(printed) * AS_PRINTED));
  }
}
