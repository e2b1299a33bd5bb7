package skidway.plan;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import skidway.erection.PullOrder;
import skidway.erection.Timetable;
import skidway.timber.Bundle;
import skidway.timber.Load;

/**
 * Which bundles are on site together. Time is counted in pulls, and cut into moments: one begins
 * whenever a load arrives after more pieces have been pulled than when the one before did. A bundle
 * is there from the moment its load arrives until its last piece is pulled; within a moment bundles
 * only go, so what is there together at all is there together when a moment begins.
 *
 * <p>Nothing is pulled that could not be: a load that is due when the wall already waits for one of
 * its pieces arrives after the pieces before that one.
 */
public final class Presence {
  /** More loads than bits in a number; what arrives later counts as arriving with the last. */
  private static final int MOST_MOMENTS = 60;

  private final int[] pulledBefore;
  private final Map<String, Integer> comes = new HashMap<>();
  private final Map<String, Integer> lastPull = new HashMap<>();

  private Presence(Task task, PullOrder order, ToIntFunction<LocalDateTime> pulledBy) {
    Map<String, Integer> momentOfLoad = new HashMap<>();
    List<Integer> pulled = new ArrayList<>();
    if (!task.start().stacks().isEmpty()) {
      pulled.add(0);
    }
    List<Load> loads = task.delivery().loads();
    int[] neededFirst = neededFirst(task, order);
    for (int i = 0; i < loads.size(); i++) {
      int when =
          pulled.isEmpty()
              ? 0
              : Math.min(pulledBy.applyAsInt(loads.get(i).arrival()), neededFirst[i]);
      if (pulled.isEmpty() || (when > last(pulled) && pulled.size() < MOST_MOMENTS)) {
        pulled.add(when);
      }
      momentOfLoad.put(loads.get(i).id(), pulled.size() - 1);
    }
    if (pulled.isEmpty()) {
      pulled.add(0);
    }
    pulledBefore = pulled.stream().mapToInt(Integer::intValue).toArray();
    for (Bundle bundle : task.delivery().bundles()) {
      boolean lies = task.start().lies(bundle.id());
      comes.put(bundle.id(), lies ? 0 : momentOfLoad.getOrDefault(bundle.loadId(), 0));
      lastPull.put(bundle.id(), bundle.pieces().stream().mapToInt(order::indexOf).max().orElse(-1));
    }
  }

  /**
   * Presence by the job's schedule; where it states none, nothing is pulled before the last load is
   * there.
   */
  public static Presence of(Task task) {
    if (!task.schedule().stated()) {
      return of(task, arrival -> 0);
    }
    return of(task, Timetable.of(task.schedule(), task.pullOrder())::laidBy);
  }

  /**
   * Presence when so many pieces are pulled by the time a load arrives, if they can be.
   *
   * @param pulledBy never less for a later time
   */
  public static Presence of(Task task, ToIntFunction<LocalDateTime> pulledBy) {
    return new Presence(task, task.pullOrder(), pulledBy);
  }

  /** By load, the first pull that needs a bundle of it or of a later one. */
  private static int[] neededFirst(Task task, PullOrder order) {
    Map<String, Integer> ofLoad = new HashMap<>();
    for (Bundle bundle : task.delivery().bundles()) {
      if (!task.start().lies(bundle.id())) {
        IntStream pulls = bundle.pieces().stream().mapToInt(order::indexOf);
        ofLoad.merge(bundle.loadId(), pulls.min().orElse(Integer.MAX_VALUE), Math::min);
      }
    }
    List<Load> loads = task.delivery().loads();
    int[] first = new int[loads.size()];
    int later = Integer.MAX_VALUE;
    for (int i = first.length - 1; i >= 0; i--) {
      later = Math.min(later, ofLoad.getOrDefault(loads.get(i).id(), Integer.MAX_VALUE));
      first[i] = later;
    }
    return first;
  }

  private static int last(List<Integer> numbers) {
    return numbers.get(numbers.size() - 1);
  }

  /** How many moments there are, at least one. */
  public int moments() {
    return pulledBefore.length;
  }

  /** How many pieces have been pulled when a moment begins. */
  public int pulledBefore(int moment) {
    return pulledBefore[moment];
  }

  /** The moment at which a bundle comes; 0 if it lies there from the start. */
  public int comes(Bundle bundle) {
    return comes.getOrDefault(bundle.id(), 0);
  }

  /** Whether a bundle is on site when a moment begins. */
  public boolean isThere(Bundle bundle, int moment) {
    return moment == comes(bundle)
        || (moment > comes(bundle)
            && lastPull.getOrDefault(bundle.id(), -1) >= pulledBefore[moment]);
  }

  /** The moments at which a bundle is there, a bit each. */
  public long moments(Bundle bundle) {
    long bits = 0;
    for (int moment = 0; moment < pulledBefore.length; moment++) {
      bits |= isThere(bundle, moment) ? 1L << moment : 0;
    }
    return bits;
  }
}
