package skidway.audit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import skidway.erection.Placement;
import skidway.erection.Timetable;
import skidway.plan.Task;
import skidway.timber.Bundle;
import skidway.timber.Load;
import skidway.timber.Piece;

/**
 * Lives through the job pull by pull and load by load, to know which bundles are on site together.
 * People pull piece after piece until a load comes, as many as the schedule says, or until they
 * need a piece that is not there yet. A load that comes after a pull begins another moment.
 */
final class OnSite {
  /** How many pieces have been pulled when each moment begins. */
  private final List<Integer> pulledBefore = new ArrayList<>();

  /** Which loads come when each moment begins. */
  private final List<List<String>> loadsOf = new ArrayList<>();

  private final Map<String, Integer> comes = new HashMap<>();

  /** After how many pulls the last piece of a bundle is gone. */
  private final Map<String, Integer> goes = new HashMap<>();

  /**
   * @param pulledBy how many pieces are pulled by a time, if they can be
   */
  OnSite(Task task, ToIntFunction<LocalDateTime> pulledBy) {
    Map<String, String> bundleOf = new HashMap<>();
    Set<String> there = new HashSet<>();
    for (Bundle bundle : task.delivery().bundles()) {
      for (Piece piece : bundle.pieces()) {
        bundleOf.put(piece.mark(), bundle.id());
      }
      if (task.start().lies(bundle.id())) {
        there.add(bundle.id());
        comes.put(bundle.id(), 0);
      }
    }
    if (!there.isEmpty()) {
      begin(0);
    }
    List<Placement> order = task.pullOrder().placements();
    int pulled = 0;
    for (Load load : task.delivery().loads()) {
      int due = pulledBy.applyAsInt(load.arrival());
      while (pulled < Math.min(due, order.size())
          && there.contains(bundleOf.get(order.get(pulled).piece().mark()))) {
        pulled++;
      }
      if (pulledBefore.isEmpty() || pulled > pulledBefore.get(pulledBefore.size() - 1)) {
        begin(pulled);
      }
      loadsOf.get(last()).add(load.id());
      for (Bundle bundle : task.delivery().bundles()) {
        if (bundle.loadId().equals(load.id()) && there.add(bundle.id())) {
          comes.put(bundle.id(), last());
        }
      }
    }
    if (pulledBefore.isEmpty()) {
      begin(0);
    }
    for (int pull = 0; pull < order.size(); pull++) {
      goes.put(bundleOf.get(order.get(pull).piece().mark()), pull + 1);
    }
    keepWhatIsNeverPulled(task);
  }

  private void begin(int pulled) {
    pulledBefore.add(pulled);
    loadsOf.add(new ArrayList<>());
  }

  private int last() {
    return pulledBefore.size() - 1;
  }

  /** A piece without a place on a wall stays in its bundle. */
  private void keepWhatIsNeverPulled(Task task) {
    Set<String> placed = new HashSet<>();
    task.pullOrder().placements().forEach(placement -> placed.add(placement.piece().mark()));
    for (Bundle bundle : task.delivery().bundles()) {
      if (bundle.pieces().isEmpty()
          || !bundle.pieces().stream().map(Piece::mark).allMatch(placed::contains)) {
        goes.put(bundle.id(), Integer.MAX_VALUE);
      }
    }
  }

  /** By the schedule that the job states; where it states none, all loads are there before. */
  static OnSite of(Task task) {
    return task.schedule().stated()
        ? new OnSite(task, Timetable.of(task.schedule(), task.pullOrder())::laidBy)
        : new OnSite(task, arrival -> 0);
  }

  /** How many pieces have been pulled when a bundle comes. */
  int comesAfter(Bundle bundle) {
    return pulledBefore.get(comes(bundle));
  }

  /** After how many pulls a bundle's last piece is gone. */
  int goesAfter(Bundle bundle) {
    return goes.getOrDefault(bundle.id(), 0);
  }

  /** How many moments there are, at least one. */
  int moments() {
    return pulledBefore.size();
  }

  /** The loads that come when a moment begins. */
  List<String> loadsOf(int moment) {
    return List.copyOf(loadsOf.get(moment));
  }

  /** The moment at which a bundle comes; 0 if it lies there from the start. */
  int comes(Bundle bundle) {
    return comes.getOrDefault(bundle.id(), 0);
  }

  /** Whether a bundle is on site when a moment begins; what comes then is. */
  boolean isThere(Bundle bundle, int moment) {
    int came = comes(bundle);
    return moment == came
        || (moment > came && goes.getOrDefault(bundle.id(), 0) > pulledBefore.get(moment));
  }

  /** Whether two bundles are ever on site at once. */
  boolean meet(Bundle a, Bundle b) {
    int later = Math.max(comes(a), comes(b));
    return isThere(a, later) && isThere(b, later);
  }
}
