package skidway.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import skidway.plan.Plan;
import skidway.progress.EventWords;
import skidway.progress.Progress;
import skidway.site.SpotKind;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/**
 * How one bundle stands.
 *
 * @param state {@code down}, {@code on the truck}, {@code not here}, {@code missing} or {@code used
 *     up}
 * @param spotId where it lies, or an empty text
 * @param tier 1 = bottom; 0 in a rack or when it lies nowhere
 * @param left pieces that can still be pulled
 * @param withheld pieces missing or damaged
 */
record BundleState(
    Bundle bundle, String state, String spotId, int tier, int left, int withheld, boolean damaged) {

  static List<BundleState> all(Standing standing) {
    return standing.task().delivery().bundles().stream()
        .map(bundle -> of(bundle, standing.progress()))
        .toList();
  }

  private static BundleState of(Bundle bundle, Progress progress) {
    String spotId = progress.spotOf(bundle.id()).orElse("");
    int withheld = count(bundle, progress.withheld()::contains);
    int pulled = count(bundle, progress.pulled()::contains);
    return new BundleState(
        bundle,
        state(bundle, progress),
        spotId,
        tier(bundle.id(), spotId, progress),
        bundle.packed().size() - withheld - pulled,
        withheld,
        progress.damaged().contains(bundle.id()));
  }

  private static int count(Bundle bundle, Predicate<String> marks) {
    return (int) bundle.pieces().stream().map(Piece::mark).filter(marks).count();
  }

  private static String state(Bundle bundle, Progress progress) {
    if (progress.spotOf(bundle.id()).isPresent()) {
      return "down";
    }
    if (progress.missing().contains(bundle.id())) {
      return "missing";
    }
    if (progress.usedUp().contains(bundle.id())) {
      return "used up";
    }
    return progress.arrived().containsKey(bundle.loadId()) ? "on the truck" : "not here";
  }

  private static int tier(String bundleId, String spotId, Progress progress) {
    boolean stacked = !spotId.isEmpty() && progress.spots().get(spotId).kind() == SpotKind.STACK;
    return stacked ? progress.lying().getOrDefault(spotId, List.of()).indexOf(bundleId) + 1 : 0;
  }

  /** Where it lies, or why it lies nowhere. */
  String words() {
    String where = state.equals("down") ? EventWords.place(spotId, tier) : state;
    return damaged ? where + ", damaged" : where;
  }

  /** Where the plan has it, when it lies elsewhere. */
  Optional<String> plannedElsewhere(Plan plan) {
    String planned = OffPlan.planned(plan, bundle.id()).orElse("no spot");
    return Optional.of(planned)
        .filter(p -> state.equals("down") && !p.equals(EventWords.place(spotId, tier)));
  }
}
