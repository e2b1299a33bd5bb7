package skidway.erection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static skidway.erection.Timbers.timber;
import static skidway.testkit.SiteBuilder.aSite;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import skidway.site.Site;
import skidway.timber.Piece;

/** The builder's site has W1 and W3 with full starters, W2 and W4 with half ones. */
class PullOrderTest {
  private static final Site SITE = aSite().build();

  @Test
  void crossingWallsRiseInTurns() {
    assertThat(
            marks(
                timber("W1", 3, 1, 4),
                timber("W2", 2, 1, 4),
                timber("W1", 1, 1, 4),
                timber("W2", 1, 1, 4),
                timber("W2", 3, 1, 4),
                timber("W1", 2, 1, 4)))
        .containsExactly("W1-1-1", "W2-1-1", "W2-2-1", "W1-2-1", "W2-3-1", "W1-3-1");
  }

  @Test
  void wallsOfOneHeightGoByTheirOrderAndThenFromLeftToRight() {
    assertThat(
            marks(
                timber("W3", 1, 1, 4),
                timber("W1", 1, 10, 1),
                timber("W1", 1, 2, 1),
                timber("W3", 1, 2, 4),
                timber("W1", 1, 1, 1)))
        .containsExactly("W1-1-1", "W1-1-2", "W1-1-10", "W3-1-1", "W3-1-2");
  }

  @Test
  void numbersPiecesFromZero() {
    Piece first = timber("W1", 1, 1, 4);
    Piece second = timber("W1", 2, 1, 4);
    PullOrder order = PullOrder.of(SITE, List.of(second, first));
    assertThat(order.indexOf(first)).isEqualTo(0);
    assertThat(order.indexOf(second)).isEqualTo(1);
  }

  @Test
  void piecesOfOneHeightHaveOneTurnUnlessSomeAreHeld() {
    List<Piece> pieces =
        List.of(timber("W1", 1, 1, 4), timber("W3", 1, 1, 4), timber("W2", 1, 1, 4));
    PullOrder order = PullOrder.of(SITE, pieces);
    // W2 begins with a half course, which is laid as low as the others.
    assertThat(turns(order)).containsExactly(0, 0, 0);
    assertThat(turns(PullOrder.of(SITE, pieces, Set.of("W3-1-1")))).containsExactly(0, 0, 2);
    assertThat(turns(PullOrder.of(SITE, List.of(timber("W1", 1, 1, 4), timber("W1", 2, 1, 4)))))
        .containsExactly(0, 1);
  }

  private static List<Integer> turns(PullOrder order) {
    return IntStream.range(0, order.placements().size()).mapToObj(order::turn).toList();
  }

  @Test
  void refusesAPieceThatIsNotPartOfTheBuilding() {
    PullOrder order = PullOrder.of(SITE, List.of(timber("W1", 1, 1, 4), timber("W9", 1, 1, 4)));
    assertThat(order.placements()).hasSize(1);
    assertThatThrownBy(() -> order.indexOf(timber("W9", 1, 1, 4)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("W9-1-1");
  }

  private static List<String> marks(Piece... pieces) {
    return PullOrder.of(SITE, List.of(pieces)).placements().stream()
        .map(p -> p.piece().mark())
        .toList();
  }
}
