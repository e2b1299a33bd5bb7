package skidway.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class PlaceOrderTest {
  @Test
  void countsAsPeopleDo() {
    assertThat(
            Stream.of("step 10", "D10", "D2", "", "step 9", "D2a", "D02").sorted(new PlaceOrder()))
        .containsExactly("", "D02", "D2", "D2a", "D10", "step 9", "step 10");
  }
}
