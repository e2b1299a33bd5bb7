package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.limits.Beam;
import skidway.limits.BeamLoad;
import skidway.limits.JoistLoad;

class SpanBendingTest {
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void isWhatStaticsOfABeamSays(long seed) {
    Random random = new Random(seed);
    SpanBending bending = new SpanBending();
    for (int round = 0; round < 300; round++) {
      double spanM = 1 + random.nextDouble() * 5;
      List<BeamLoad> loads = new ArrayList<>();
      bending.clear();
      for (int i = 0; i <= random.nextInt(25); i++) {
        double fromM = random.nextDouble() * spanM;
        double toM = random.nextBoolean() ? fromM : fromM + random.nextDouble() * (spanM - fromM);
        JoistLoad load = new JoistLoad(0, 0, fromM, toM, random.nextDouble());
        loads.add(load.of(5000));
        bending.add(load, 5000);
      }
      double exactNm = Beam.simple(spanM, loads).greatestMoment().value();
      assertThat(bending.mostNm(spanM)).isCloseTo(exactNm, within(1e-4 + 1e-6 * exactNm));
    }
  }
}
