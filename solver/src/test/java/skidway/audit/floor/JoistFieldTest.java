package skidway.audit.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import skidway.site.Deck;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Outline;
import skidway.site.Point;

final class JoistFieldTest {
  private static final Deck DECK =
      new Deck("deck", Outline.box(0, 0, 6, 2), 0.5, 2, List.of(), List.of());

  /** Joists along x at y = 0.1, 0.6, 1.1 and 1.6, held up at x = 0, 3 and 6. */
  private static final JoistField FIELD =
      JoistField.of(
          DECK,
          new Joists(
              0,
              0.5,
              new Point(2, 1.1),
              List.of(new Point(3, 0), new Point(0, 0), new Point(6, 9)),
              new JoistDesign.LiveLoad(2)));

  private static List<LoadedSpan> loaded(double x0, double y0, double x1, double y1) {
    return FIELD.loaded(List.of(new LineLoad("D1", new Point(x0, y0), new Point(x1, y1), 100)));
  }

  private static List<EvenLoad> loads(List<LoadedSpan> spans) {
    return spans.stream().flatMap(s -> s.span().loads().stream()).toList();
  }

  @Test
  void aBearerAcrossJoistsIsAPointOnEachByWhatIsNearestToIt() {
    List<LoadedSpan> spans = loaded(1, 0.5, 1, 1.0);
    assertThat(spans).hasSize(2);
    assertThat(spans.get(0).middle().y()).isCloseTo(0.6, within(1e-9));
    assertThat(spans.get(1).middle().y()).isCloseTo(1.1, within(1e-9));
    assertThat(loads(spans)).allMatch(EvenLoad::isPoint).allMatch(load -> load.fromM() == 1);
    assertThat(loads(spans).get(0).newtons()).isCloseTo(70, within(1e-9));
    assertThat(loads(spans).get(1).newtons()).isCloseTo(30, within(1e-9));
  }

  @Test
  void aBearerAlongAJoistIsSpreadOverItsLengthAndSplitAtASupport() {
    List<LoadedSpan> spans = loaded(2, 0.7, 4, 0.7);
    assertThat(loads(spans)).containsExactly(new EvenLoad(2, 3, 50), new EvenLoad(0, 1, 50));
    assertThat(spans).extracting(LoadedSpan::middle).extracting(Point::x).containsExactly(1.5, 4.5);
  }

  @Test
  void whatLiesBeyondTheLastJoistHangsOnIt() {
    assertThat(loaded(1, 1.7, 1, 9)).hasSize(1);
    assertThat(loads(loaded(1, 1.7, 1, 9)).get(0).newtons()).isCloseTo(100, within(1e-9));
  }

  @Test
  void whatLiesBeyondTheLastSupportLoadsNoSpan() {
    assertThat(loaded(-2, 1, -0.1, 1)).isEmpty();
    assertThat(loads(loaded(5, 1, 7, 1))).containsExactly(new EvenLoad(2, 3, 50));
  }

  @Test
  void aDeckNarrowerThanTheSpacingHangsOnTheNearestJoist() {
    Deck plank = new Deck("plank", Outline.box(0, 0.2, 6, 0.5), 0.5, 2, List.of(), List.of());
    Joists joists =
        new Joists(
            0,
            0.5,
            new Point(2, 1.1),
            List.of(new Point(0, 0), new Point(6, 0)),
            new JoistDesign.LiveLoad(2));
    List<LoadedSpan> spans =
        JoistField.of(plank, joists)
            .loaded(List.of(new LineLoad("D1", new Point(1, 0.2), new Point(1, 0.5), 100)));
    assertThat(loads(spans)).containsExactly(EvenLoad.point(1, 100));
  }

  /**
   * Two roundings of each line halfway lie a hair apart; what lies between them must not be lost.
   */
  @Test
  void whatLiesJustHalfwayIsNotLost() {
    Outline outline = Outline.box(0, 0, 6, 8);
    for (double spacingM : new double[] {0.3, 0.4, 0.4064, 0.6096}) {
      Joists joists =
          new Joists(
              0,
              spacingM,
              new Point(0, 0.1),
              List.of(new Point(0, 0), new Point(6, 0)),
              new JoistDesign.LiveLoad(2));
      JoistField field =
          JoistField.of(new Deck("deck", outline, 0.5, 2, List.of(), List.of()), joists);
      for (int joist = 0; 0.1 + joist * spacingM < 7; joist++) {
        double low = 0.1 + joist * spacingM + spacingM / 2;
        double high = 0.1 + (joist + 1) * spacingM - spacingM / 2;
        for (double y : new double[] {low, high, Math.nextDown(low), Math.nextUp(high)}) {
          List<LineLoad> line = List.of(new LineLoad("D1", new Point(1, y), new Point(3, y), 100));
          assertThat(loads(field.loaded(line))).as("at %s", y).hasSize(1);
        }
      }
    }
  }

  @Property(seed = "20310505")
  void nothingIsLostOrCountedTwice(
      @ForAll @DoubleRange(min = 0.01, max = 2.99) double x0,
      @ForAll @DoubleRange(min = -1, max = 3) double y0,
      @ForAll @DoubleRange(min = 0.01, max = 2.99) double x1,
      @ForAll @DoubleRange(min = -1, max = 3) double y1) {
    double sum = loads(loaded(x0, y0, x1, y1)).stream().mapToDouble(EvenLoad::newtons).sum();
    assertThat(sum).isCloseTo(100, within(1e-6));
  }
}
