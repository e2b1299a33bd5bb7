package skidway.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import skidway.plan.Margin;
import skidway.rules.Rule;
import skidway.timber.Piece;
import skidway.units.Figures;

/**
 * Says which kinds of piece are too heavy for people, and where. No plan can settle that, so it is
 * noted once a rule with a way out; every kind of piece gets its margin.
 */
final class PeopleRules {
  private static final double ROUNDING = 1e-6;
  private static final double MOST_INDEX = 1;

  private final Scene scene;
  private final Figures figures;
  private final Team team;
  private final List<Finding> notes = new ArrayList<>();
  private final List<Margin> margins = new ArrayList<>();

  PeopleRules(Scene scene) {
    this.scene = scene;
    this.figures = scene.task().figures();
    this.team = new Team(scene);
  }

  List<Finding> notes() {
    return notes;
  }

  List<Margin> margins() {
    return margins;
  }

  void check() {
    List<Piece> pieces = scene.task().delivery().pieces();
    List<HandLoad> loads = new HandLoads(scene).all();
    byKind(pieces, piece -> piece).forEach(this::teamMargin);
    byKind(loads, HandLoad::piece).forEach(this::indexMargin);
    teamLift(pieces);
    liftIndex(loads);
  }

  private void teamMargin(PieceKind kind, List<Piece> pieces) {
    Piece worst = heaviest(pieces);
    String where = where(kind, pieces.size(), worst);
    margin(Rule.TEAM_LIFT, where, worst.mass().highKg(), team.mostKg());
  }

  private void indexMargin(PieceKind kind, List<HandLoad> loads) {
    HandLoad worst = worst(loads);
    String where = where(kind, loads.size(), worst.piece()) + ", " + worst.end();
    margin(Rule.LIFT_INDEX, where, worst.index(), MOST_INDEX);
  }

  private void teamLift(List<Piece> pieces) {
    List<Piece> tooHeavy =
        pieces.stream().filter(p -> over(p.mass().highKg(), team.mostKg())).toList();
    if (tooHeavy.isEmpty()) {
      return;
    }
    Piece worst = heaviest(tooHeavy);
    Piece shortest =
        tooHeavy.stream().min(Comparator.comparingDouble(Piece::lengthM)).orElseThrow();
    double heaviestKg = worst.mass().highKg();
    note(
        Rule.TEAM_LIFT,
        worst.mark(),
        heaviestKg,
        team.mostKg(),
        (tooHeavy.size() + " of " + pieces.size() + " pieces may weigh more than ")
            + (figures.mass(team.mostKg()) + ", what " + team.most() + " people lift together: ")
            + ("up to "
                + figures.mass(heaviestKg)
                + " ("
                + worst.mark()
                + "), the shortest of them ")
            + (figures.length(shortest.lengthM()) + " long (" + shortest.mark() + "). ")
            + (scene.task().site().byHand()
                ? "No machine is there: bring a lifting device, or let nobody lift them."
                : "They are for the machine or a lifting device."));
  }

  private void liftIndex(List<HandLoad> loads) {
    List<HandLoad> tooMuch = loads.stream().filter(load -> over(load.index(), MOST_INDEX)).toList();
    if (tooMuch.isEmpty()) {
      return;
    }
    HandLoad worst = worst(tooMuch);
    String most =
        Double.isInfinite(worst.index())
            ? "at the worst where it recommends no lift by hand at all"
            : "up to " + figures.of(Rule.LIFT_INDEX.measure(), worst.index()) + " times as much";
    note(
        Rule.LIFT_INDEX,
        worst.piece().mark(),
        worst.index(),
        MOST_INDEX,
        (tooMuch.size() + " of " + loads.size() + " pieces ask more of each carrier than the")
            + (" lifting equation recommends, " + most)
            + (" (" + worst.piece().mark() + ", " + worst.end() + "). ")
            + "Take more people, a platform or a device. Screening only.");
  }

  private static Piece heaviest(List<Piece> pieces) {
    return pieces.stream()
        .max(Comparator.comparingDouble(piece -> piece.mass().highKg()))
        .orElseThrow();
  }

  private static HandLoad worst(List<HandLoad> loads) {
    return loads.stream().max(Comparator.comparingDouble(HandLoad::index)).orElseThrow();
  }

  private String where(PieceKind kind, int count, Piece worst) {
    return worst.mark() + ", worst of " + count + " of " + kind.words(figures);
  }

  private static boolean over(double value, double limit) {
    return !(value <= limit * (1 + ROUNDING));
  }

  private void note(Rule rule, String where, double value, double limit, String sentence) {
    notes.add(new Finding(rule, where, value, limit, sentence));
  }

  private void margin(Rule rule, String where, double value, double limit) {
    if (Double.isFinite(value)) {
      margins.add(new Margin(rule, where, value, limit, false));
    }
  }

  private static <T> Map<PieceKind, List<T>> byKind(List<T> all, Function<T, Piece> piece) {
    return all.stream()
        .collect(
            Collectors.groupingBy(
                item -> PieceKind.of(piece.apply(item)), LinkedHashMap::new, Collectors.toList()));
  }
}
