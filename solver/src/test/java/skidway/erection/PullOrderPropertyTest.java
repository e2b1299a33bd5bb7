package skidway.erection;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.SiteBuilder.aSite;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import skidway.site.Site;
import skidway.timber.Piece;

class PullOrderPropertyTest {
  private static final Site SITE = aSite().build();

  @Provide
  Arbitrary<List<Piece>> packages() {
    return Combinators.combine(
            Arbitraries.of("W1", "W2", "W3", "W4"),
            Arbitraries.integers().between(1, 6),
            Arbitraries.integers().between(1, 3),
            Arbitraries.doubles().between(0.5, 4))
        .as(Timbers::timber)
        .list()
        .uniqueElements(Piece::mark)
        .ofMaxSize(40);
  }

  @Property(seed = "20310505", tries = 100)
  void nothingIsLaidBeforeWhatLiesBeneathIt(@ForAll("packages") List<Piece> pieces) {
    PullOrder order = PullOrder.of(SITE, pieces);
    for (Placement lower : order.placements()) {
      for (Placement upper : order.placements()) {
        boolean beneath =
            lower.wall().equals(upper.wall())
                && lower.piece().course() < upper.piece().course()
                && lower.fromM() < upper.toM()
                && upper.fromM() < lower.toM();
        if (beneath) {
          assertThat(order.indexOf(lower.piece()))
              .as("%s under %s", lower.piece().mark(), upper.piece().mark())
              .isLessThan(order.indexOf(upper.piece()));
        }
      }
    }
  }

  @Property(seed = "20310505", tries = 100)
  void everyPieceIsPulledOnceWhateverTheOrderOfTheList(
      @ForAll("packages") List<Piece> pieces, @ForAll long seed) {
    List<Piece> shuffled = new ArrayList<>(pieces);
    Collections.shuffle(shuffled, new Random(seed));
    PullOrder order = PullOrder.of(SITE, shuffled);
    assertThat(order.placements()).isEqualTo(PullOrder.of(SITE, pieces).placements());
    assertThat(order.placements())
        .extracting(Placement::piece)
        .containsExactlyInAnyOrderElementsOf(pieces);
    for (Placement placement : order.placements()) {
      int index = order.indexOf(placement.piece());
      assertThat(order.placements().get(index)).isSameAs(placement);
    }
  }
}
