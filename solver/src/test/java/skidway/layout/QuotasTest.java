package skidway.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class QuotasTest {
  @Test
  void equalSharesAndWhatIsLeftGoesToTheLargeOnes() {
    checkShares(new int[] {10, 10, 10}, 30, 10, 10, 10);
    checkShares(new int[] {2, 100, 50}, 62, 2, 30, 30);
    checkShares(new int[] {50, 0, 100}, 90, 45, 0, 45);
    checkShares(new int[] {1, 2}, 100, 1, 2);
    checkShares(new int[] {}, 10);
  }

  private static void checkShares(int[] sizes, int total, int... expected) {
    assertThat(Quotas.divide(sizes, total)).containsExactly(expected);
  }
}
