package skidway.staging;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import skidway.limits.AreaLoad;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.ChartRow;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.timber.Bundle;
import skidway.units.Figures;

/** Says what one change would give a bundle a spot when a rule keeps it off all of them. */
final class Remedy {
  /** The rules that a machine standing elsewhere, or another machine, would get round. */
  private static final Set<Rule> MACHINE =
      EnumSet.of(
          Rule.MACHINE_REACH,
          Rule.MACHINE_CAPACITY,
          Rule.SLING_LOAD,
          Rule.SLING_ANGLE,
          Rule.TRAVEL_WIDTH,
          Rule.LINE_LIFT);

  private final Board board;
  private final BundleFit fit;
  private final Figures figures;

  Remedy(Board board) {
    this.board = board;
    this.fit = new BundleFit(board);
    this.figures = board.task.figures();
  }

  /** One sentence. */
  String of(int number, Rule binding) {
    Bundle bundle = board.bundles.get(number);
    return switch (binding) {
      case MACHINE_REACH, MACHINE_CAPACITY -> nearerStand(number);
      case ZONE_LOAD -> strongerDeck(number);
      case GROUND_PRESSURE -> firmerGround(number);
      case STACK_SLENDER ->
          "It is too high for its width: laid on its wide side, or in two bundles, it would stand.";
      case SPOT_MASS ->
          text("A spot that may carry %s would take it.", figures.mass(board.massKg[number]));
      case FITS_SPOT, RACK_LENGTH, RACK_ROOM ->
          text(
              "A spot %s long and %s wide would take it.",
              figures.length(bundle.lengthM()), figures.length(bundle.widthM()));
      case SLING_LOAD -> "Stronger slings, or longer ones at a steeper angle, would lift it.";
      case SLING_ANGLE ->
          text(
              "Longer slings, at %s or steeper, would do.",
              figures.of(
                  Setting.SLING_ANGLE.measure(), board.task.settings().get(Setting.SLING_ANGLE)));
      case YARD_SLOPE ->
          text(
              "Ground levelled to a slope of %s or less would do.",
              figures.of(
                  Setting.YARD_SLOPE.measure(), board.task.settings().get(Setting.YARD_SLOPE)));
      case OVERHEAD_LINE -> "A yard farther from the overhead line would do.";
      case EXCAVATION_EDGE ->
          "A yard farther from the excavation would do, or the excavation filled.";
      case DECK_EDGE ->
          moreYard(bundle)
              + " On the deck, a guard that the site lead decides on (deckEdgeSetback) or walls that"
              + " stand already (built) would make room.";
      case TRAVEL_WIDTH ->
          "A wider lane to a machine stand, or slings that carry it lengthwise, would let it"
              + " through.";
      case LINE_LIFT -> "A machine stand or truck stand farther from the overhead line would do.";
      case GROUND_CLEARANCE ->
          text(
              "Bearers %s high would do.",
              figures.length(board.task.settings().get(Setting.GROUND_CLEARANCE)));
      default -> moreYard(bundle);
    };
  }

  private String nearerStand(int number) {
    Bundle bundle = board.bundles.get(number);
    double massKg = board.massKg[number];
    OptionalDouble reachM =
        board.task.site().machine().chart().stream()
            .mapToDouble(ChartRow::reachM)
            .filter(r -> board.lifts.capacityKg(bundle, r) >= massKg)
            .max();
    if (reachM.isEmpty()) {
      return text(
          "By its chart the machine lifts %s at no reach: it takes a stronger machine, or the"
              + " bundle opened on the truck.",
          figures.mass(massKg));
    }
    double nearestM =
        IntStream.range(0, board.spotCount())
            .filter(s -> MACHINE.containsAll(fit.refusals(number, s)))
            .mapToDouble(s -> toStandM(board.centre(s)))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    String reach = figures.length(reachM.getAsDouble());
    if (Double.isInfinite(nearestM) || nearestM <= reachM.getAsDouble()) {
      return text("%s A stand within %s of it can lift this bundle.", moreYard(bundle), reach);
    }
    return text(
        "A machine stand within %s of a spot for it would do; the nearest such spot is %s from a"
            + " stand.",
        reach, figures.length(nearestM));
  }

  private double toStandM(Point place) {
    return board.task.site().machine().stands().stream()
        .map(MachineStand::at)
        .mapToDouble(place::distanceTo)
        .min()
        .orElseThrow();
  }

  private String strongerDeck(int number) {
    Bundle bundle = board.bundles.get(number);
    double reachM = board.task.settings().get(Setting.BEARER_REACH);
    double kpa =
        AreaLoad.kpa(
            board.massKg[number], AreaLoad.bearingM2(bundle.lengthM(), bundle.widthM(), reachM));
    return text(
        "A deck allowed %s would bear it, or longer bearers if the floor's designer agrees to count"
            + " them (bearerReach); or: %s",
        figures.pressure(kpa), moreYard(bundle));
  }

  private String firmerGround(int number) {
    Bundle bundle = board.bundles.get(number);
    double perKpaKg =
        IntStream.range(0, board.footings.count())
            .filter(f -> !board.footings.isDeck(f))
            .mapToDouble(f -> board.footings.mostKg(f, bundle) / board.footings.allowedKpa(f))
            .max()
            .orElseThrow();
    return text(
        "Ground allowed %s would bear it, or wider bearers, or longer ones (bearerWidth,"
            + " bearerProud).",
        figures.pressure(board.massKg[number] / perKpaKg));
  }

  /** Room for one more stack beside the others: its place, its open strip and the gaps. */
  private String moreYard(Bundle bundle) {
    double gapM = board.task.settings().get(Setting.STACK_GAP);
    double stripM = board.task.settings().get(Setting.OPEN_STRIP);
    return text(
        board.byHand()
            ? "Another %s by %s of yard would take it."
            : "Another %s by %s of yard, within the machine's reach, would take it.",
        figures.length(bundle.lengthM() + 2 * gapM),
        figures.length(bundle.widthM() + stripM + 2 * gapM));
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, List.of(values).toArray());
  }
}
