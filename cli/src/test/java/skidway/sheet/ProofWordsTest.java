package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import skidway.plan.Plan;
import skidway.plan.Proof;
import skidway.plan.Proof.Ignored;

class ProofWordsTest {
  private static List<String> sentences(double lowestS, double countedS, Ignored... ignored) {
    Plan plan = SampleHouse.plan();
    return ProofWords.sentences(
        plan.withProof(Optional.of(new Proof(lowestS, countedS, List.of(ignored)))));
  }

  @Test
  void theDistanceIsRoundedUpSoThatNothingUnprovenIsSaid() {
    assertThat(sentences(1000, 1031.1).get(0)).startsWith("At most 3.2 % above the best possible");
    assertThat(sentences(1000, 1000.001).get(0)).startsWith("At most 0.1 %");
  }

  @Test
  void onlyAPlanThatTakesNoMoreThanTheLowestIsCalledBest() {
    assertThat(sentences(1000, 1000)).hasSize(1).first().asString().startsWith("Proven best");
    assertThat(sentences(999.999, 1000).get(0)).doesNotContain("Proven best");
  }

  @Test
  void whatTheProofLeavesOutIsSaid() {
    assertThat(sentences(1000, 1010, Ignored.PATHS, Ignored.WAITING).get(1))
        .contains("paths that stacks shut together and room for bundles to wait in");
    assertThat(sentences(1000, 1000, Ignored.DRIVES).get(0))
        .contains("not counting drives to where bundles wait");
  }

  @Test
  void nothingIsSaidOfAPlanOfWhichNothingIsProven() {
    assertThat(ProofWords.sentences(SampleHouse.plan())).isEmpty();
  }
}
