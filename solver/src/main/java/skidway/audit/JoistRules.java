package skidway.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import skidway.audit.floor.JoistField;
import skidway.audit.floor.JoistStrength;
import skidway.audit.floor.LineLoad;
import skidway.audit.floor.LoadedSpan;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.Joists;
import skidway.site.Point;

/**
 * Checks what all stacks on a deck together do to its joists. Each stack is told the worst of the
 * joists that bear a part of it.
 */
final class JoistRules {
  private final Scene scene;
  private final Ledger ledger;

  JoistRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  void check() {
    for (Deck deck : scene.task().site().decks()) {
      deck.joists().ifPresent(joists -> check(deck, joists));
    }
  }

  /** Which stacks stand partly beyond the last support, where no span bears them. */
  List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    for (Deck deck : scene.task().site().decks()) {
      deck.joists()
          .ifPresent(
              joists ->
                  scene.lying(deck).stream()
                      .filter(standing -> Soundness.sound(standing.spot()))
                      .filter(standing -> standsBeyond(standing, joists))
                      .map(
                          standing ->
                              "Not checked: what "
                                  + standing.name()
                                  + (" does to joists of " + deck.id())
                                  + " beyond their last support; needs a support there.")
                      .forEach(remarks::add));
    }
    return remarks;
  }

  private boolean standsBeyond(Standing standing, Joists joists) {
    Point way = Point.unit(joists.directionDeg());
    DoubleSummaryStatistics supported =
        joists.supports().stream().mapToDouble(p -> p.dot(way)).summaryStatistics();
    return lines(standing)
        .flatMap(line -> Stream.of(line.from(), line.to()))
        .mapToDouble(p -> p.dot(way))
        .anyMatch(
            t ->
                t < supported.getMin() - Ledger.LENGTH_TOLERANCE_M
                    || t > supported.getMax() + Ledger.LENGTH_TOLERANCE_M);
  }

  private void check(Deck deck, Joists joists) {
    List<Standing> lying =
        scene.lying(deck).stream().filter(standing -> Soundness.sound(standing.spot())).toList();
    List<LoadedSpan> spans =
        JoistField.of(deck, joists).loaded(lying.stream().flatMap(this::lines).toList());
    for (Standing standing : lying) {
      List<LoadedSpan> beneath =
          spans.stream().filter(span -> span.spotIds().contains(standing.id())).toList();
      joistBending(standing, deck, joists, beneath);
      joistShear(standing, deck, joists, beneath);
    }
  }

  private void joistBending(Standing standing, Deck deck, Joists joists, List<LoadedSpan> beneath) {
    worst(beneath, s -> s.span().momentNm(), s -> strength(joists, s).momentNm())
        .ifPresent(
            span ->
                ledger.most(
                    Rule.JOIST_BENDING,
                    standing.id(),
                    span.span().momentNm(),
                    strength(joists, span).momentNm(),
                    moment ->
                        standing.name()
                            + (" and what lies near it bend " + joist(deck, span))
                            + (" by " + moment)));
  }

  private void joistShear(Standing standing, Deck deck, Joists joists, List<LoadedSpan> beneath) {
    worst(beneath, s -> s.span().shearN(), s -> strength(joists, s).shearN())
        .ifPresent(
            span ->
                ledger.most(
                    Rule.JOIST_SHEAR,
                    standing.id(),
                    span.span().shearN(),
                    strength(joists, span).shearN(),
                    shear ->
                        standing.name()
                            + (" and what lies near it shear " + joist(deck, span))
                            + (" by " + shear)));
  }

  private static Optional<LoadedSpan> worst(
      List<LoadedSpan> spans,
      ToDoubleFunction<LoadedSpan> value,
      ToDoubleFunction<LoadedSpan> limit) {
    return spans.stream()
        .max(
            Comparator.comparingDouble(s -> taken(value.applyAsDouble(s), limit.applyAsDouble(s))));
  }

  /** The share of a limit that is taken; of nothing, nothing takes nothing. */
  private static double taken(double value, double limit) {
    return value > 0 ? value / limit : 0;
  }

  private static JoistStrength strength(Joists joists, LoadedSpan span) {
    return JoistStrength.of(joists, span.span().lengthM());
  }

  /** The bearers of a stack, or the two rails along a rack's long sides. */
  private Stream<LineLoad> lines(Standing standing) {
    double newtons = Gravity.newtons(standing.massKg());
    Footprint place = standing.spot().footprint();
    if (!standing.rack()) {
      double reachM = scene.setting(Setting.BEARER_REACH);
      return Bearing.of(standing).lines(standing.id(), place, newtons, reachM).stream();
    }
    List<Point> corners = place.outline().corners();
    return Stream.of(
        new LineLoad(standing.id(), corners.get(0), corners.get(1), newtons / 2),
        new LineLoad(standing.id(), corners.get(2), corners.get(3), newtons / 2));
  }

  private String joist(Deck deck, LoadedSpan span) {
    return "the joist of "
        + deck.id()
        + " at ("
        + scene.task().figures().length(span.middle().x())
        + ", "
        + scene.task().figures().length(span.middle().y())
        + ")";
  }
}
