package skidway.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import skidway.site.Footprint;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.timber.BearerRow;

/**
 * A deck of 8 by 4 m with joists along x at y = 0, 0.5, ... 4, on supports at x = 0.2, 3.2 and 7.8.
 */
class JoistGridTest {
  private static final JoistGrid GRID = grid(0);

  @Test
  void joistsFillTheDeckAndSupportsCutThem() {
    assertThat(GRID.joists()).isEqualTo(9);
    assertThat(GRID.spans()).isEqualTo(2);
    assertThat(GRID.spanM(0)).isCloseTo(3, within(1e-12));
    assertThat(GRID.spanM(1)).isCloseTo(4.6, within(1e-12));
  }

  /**
   * A bearer across the joists from y = 0.9 to 1.9: joist 2 has 0.35 m of it, 3 has 0.5, 4 0.15.
   */
  @Test
  void aBearerAcrossIsAPointOnEachJoist() {
    check(
        loads(line(1.2, 0.9, 1.2, 1.9)),
        new JoistLoad(2, 0, 1, 1, 0.35),
        new JoistLoad(3, 0, 1, 1, 0.5),
        new JoistLoad(4, 0, 1, 1, 0.15));
  }

  /** A bearer along joist 3 from x = 2.2 to 4.2: half of it on each span. */
  @Test
  void aBearerAlongIsCutByTheSupport() {
    check(
        loads(line(4.2, 1.6, 2.2, 1.6)),
        new JoistLoad(3, 0, 2, 3, 0.5),
        new JoistLoad(3, 1, 0, 1, 0.5));
  }

  /** From (0.7, 0.5) to (2.7, 2.5), slope 1: cut at y = 0.75, 1.25, 1.75, 2.25. */
  @Test
  void aBearerAslantIsSpreadAlongEachJoist() {
    check(
        loads(line(0.7, 0.5, 2.7, 2.5)),
        new JoistLoad(1, 0, 0.5, 0.75, 0.125),
        new JoistLoad(2, 0, 0.75, 1.25, 0.25),
        new JoistLoad(3, 0, 1.25, 1.75, 0.25),
        new JoistLoad(4, 0, 1.75, 2.25, 0.25),
        new JoistLoad(5, 0, 2.25, 2.5, 0.125));
  }

  @Test
  void halfwayCountsForBothHowEverItIsRounded() {
    for (double off : new double[] {-1e-9, 0, 1e-9}) {
      check(
          loads(line(1.2, 1.25 + off, 2.2, 1.25)),
          new JoistLoad(2, 0, 1, 2, 1),
          new JoistLoad(3, 0, 1, 2, 1));
      check(
          loads(line(3.2 + off, 1, 3.2, 1.0)),
          new JoistLoad(2, 0, 3, 3, 1),
          new JoistLoad(2, 1, 0, 0, 1));
    }
  }

  @Test
  void theOutermostJoistGetsWhatLiesBeyondAndNoSpanWhatLiesBeyondTheSupports() {
    check(loads(line(1.2, 3.5, 1.2, 5.5)), part(7, 0.125), part(8, 0.875));
    check(loads(line(1.2, -1, 1.2, -0.5)), part(0, 1));
    check(loads(line(7.3, 1, 8.3, 1)), new JoistLoad(2, 1, 4.1, 4.6, 0.5));
    check(loads(line(0.1, 1, 0.1, 1.1)));
    check(loads(line(7.8, 1, 7.8, 1.1)), new JoistLoad(2, 1, 4.6, 4.6, 1));
  }

  /** A deck turned with its joists and its load is the same deck. */
  @Property(seed = "20310505", tries = 60)
  void turningChangesNothing(
      @ForAll @DoubleRange(max = 360) double turnDeg,
      @ForAll @DoubleRange(min = 0.3, max = 7.7) double x,
      @ForAll @DoubleRange(min = 0.1, max = 3.9) double y) {
    LineLoad line = line(x, y, 3.01, 1.97);
    LineLoad turned = new LineLoad(turned(line.from(), turnDeg), turned(line.to(), turnDeg), 1);

    List<JoistLoad> expected = GRID.loads(List.of(line));
    check(grid(turnDeg).loads(List.of(turned)), expected.toArray(JoistLoad[]::new));
  }

  @Property(seed = "20310505")
  void joistsBearAllThatLiesBetweenTheOuterSupports(
      @ForAll @DoubleRange(min = 2.1, max = 5.9) double x,
      @ForAll @DoubleRange(min = 0, max = 4) double y,
      @ForAll @DoubleRange(max = 360) double headingDeg,
      @ForAll @DoubleRange(min = 0.4, max = 1.2) double widthM) {
    // Whole centimetres and a bit, so that nothing lies just halfway or on a support.
    Point centre = new Point(x + 0.0123, y + 0.0077);
    Footprint bundle = new Footprint(centre, headingDeg, 3.6, widthM);
    BearerRow row = new BearerRow(4, 1, 0.3, widthM);
    List<JoistLoad> loads = GRID.loads(BearerLines.under(row, bundle, widthM));

    assertThat(loads.stream().mapToDouble(JoistLoad::share).sum()).isCloseTo(1, within(1e-9));
    assertThat(loads)
        .allMatch(l -> l.fromM() >= 0 && l.toM() <= GRID.spanM(l.span()) && l.share() >= -1e-9);
    Footprint rack = new Footprint(centre, headingDeg, 1.8, 0.9);
    assertThat(GRID.loads(BearerLines.rails(rack)).stream().mapToDouble(JoistLoad::share).sum())
        .isCloseTo(1, within(1e-9));
  }

  /** What a single load does in closed form, against the beam that can do any. */
  @Property(seed = "20310505")
  void momentAndReactionsAreThoseOfASimpleBeam(
      @ForAll @DoubleRange(max = 4) double fromM,
      @ForAll @DoubleRange(max = 4) double toM,
      @ForAll @DoubleRange(max = 4) double xM) {
    JoistLoad load = new JoistLoad(0, 0, Math.min(fromM, toM), Math.max(fromM, toM), 0.3);
    Beam beam = Beam.simple(4, List.of(load.of(1000)));

    assertThat(1000 * load.reactionLeft(4)).isCloseTo(beam.reactionLeftN(), within(1e-8));
    assertThat(1000 * load.reactionRight(4)).isCloseTo(beam.reactionRightN(), within(1e-8));
    assertThat(1000 * load.momentAt(4, xM)).isCloseTo(beam.momentNm(xM), within(1e-8));
  }

  /** 0.25 of a stack at 1 m of 4: 3/16 of it left, a moment of 3/16 there and 1/8 at 2 m. */
  @Test
  void aPointLoadByHand() {
    JoistLoad load = new JoistLoad(0, 0, 1, 1, 0.25);

    assertThat(load.reactionLeft(4)).isCloseTo(0.1875, within(1e-12));
    assertThat(load.reactionRight(4)).isCloseTo(0.0625, within(1e-12));
    assertThat(load.momentAt(4, 1)).isCloseTo(0.1875, within(1e-12));
    assertThat(load.momentAt(4, 2)).isCloseTo(0.125, within(1e-12));
  }

  private static JoistGrid grid(double turnDeg) {
    List<Point> corners = Outline.box(0, 0, 8, 4).corners();
    return JoistGrid.of(
        new Joists(
            turnDeg,
            0.5,
            turned(new Point(5, 1), turnDeg),
            List.of(
                turned(new Point(7.8, 1), turnDeg),
                turned(new Point(0.2, 3), turnDeg),
                turned(new Point(3.2, 2), turnDeg)),
            new JoistDesign.LiveLoad(2)),
        new Outline(corners.stream().map(c -> turned(c, turnDeg)).toList()));
  }

  private static Point turned(Point p, double degrees) {
    Point along = Point.unit(degrees);
    return along.times(p.x()).plus(along.turnedLeft().times(p.y()));
  }

  private static LineLoad line(double x0, double y0, double x1, double y1) {
    return new LineLoad(new Point(x0, y0), new Point(x1, y1), 1);
  }

  private static List<JoistLoad> loads(LineLoad line) {
    return GRID.loads(List.of(line));
  }

  private static JoistLoad part(int joist, double share) {
    return new JoistLoad(joist, 0, 1, 1, share);
  }

  private static void check(List<JoistLoad> loads, JoistLoad... expected) {
    assertThat(loads).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      JoistLoad load = loads.get(i);
      assertThat(load.joist()).isEqualTo(expected[i].joist());
      assertThat(load.span()).isEqualTo(expected[i].span());
      assertThat(load.fromM()).isCloseTo(expected[i].fromM(), within(1e-6));
      assertThat(load.toM()).isCloseTo(expected[i].toM(), within(1e-6));
      assertThat(load.share()).isCloseTo(expected[i].share(), within(1e-6));
    }
  }
}
