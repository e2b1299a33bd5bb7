package skidway.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Bands timbers into bundles in the mill's order. The mill saws run by run (some walls at a time)
 * and within a run one length class after another, long stock first; it bands what comes off the
 * saw. It starts from the cut list but takes stock as it comes, so that a bundle mixes timbers from
 * many courses: good for the mill, and the reason why somebody has to think on the site.
 *
 * @param fullHeight height of a full timber; half ones of any length are sawn last
 * @param runOfWall the run in which each wall is sawn
 * @param classes upper ends of the length classes, in ticks, from short to long
 * @param wide timbers side by side in a bundle
 * @param layers most layers of a bundle
 * @param strayCourses how many courses a timber may come off the saw too early or too late
 */
record Bundling(
    int fullHeight,
    Map<String, Integer> runOfWall,
    List<Integer> classes,
    int wide,
    int layers,
    int strayCourses,
    long seed) {

  private record SawnFirst(int run, int lengthClass) {}

  /** Two truck loads, each listed in the order in which its bundles come off. */
  List<MillBundle> bundle(List<Timber> timbers) {
    Map<SawnFirst, List<Timber>> batches = new TreeMap<>(millOrder());
    for (Timber timber : sawn(timbers)) {
      batches.computeIfAbsent(batch(timber), b -> new ArrayList<>()).add(timber);
    }
    List<MillBundle> banded = new ArrayList<>();
    batches.values().forEach(batch -> banded.addAll(band(batch)));
    return onTrucks(banded);
  }

  private static Comparator<SawnFirst> millOrder() {
    return Comparator.comparingInt(SawnFirst::run)
        .thenComparing(Comparator.comparingInt(SawnFirst::lengthClass).reversed());
  }

  private SawnFirst batch(Timber timber) {
    if (timber.height() != fullHeight) {
      return new SawnFirst(Integer.MAX_VALUE, 0);
    }
    int lengthClass = 0;
    while (timber.length() > classes.get(lengthClass)) {
      lengthClass++;
    }
    return new SawnFirst(runOfWall.get(timber.wall()), lengthClass);
  }

  private List<Timber> sawn(List<Timber> timbers) {
    Random saw = new Random(seed);
    Map<Timber, Double> turn = new HashMap<>();
    for (Timber timber : timbers) {
      turn.put(timber, timber.course() + saw.nextDouble() * strayCourses);
    }
    return timbers.stream().sorted(Comparator.comparingDouble(turn::get)).toList();
  }

  /** Cuts a batch into bundles of nearly the same number of timbers, longest at the bottom. */
  private List<MillBundle> band(List<Timber> batch) {
    int count = (batch.size() + wide * layers - 1) / (wide * layers);
    List<MillBundle> banded = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Timber> part =
          new ArrayList<>(batch.subList(i * batch.size() / count, (i + 1) * batch.size() / count));
      part.sort(Comparator.comparingInt(Timber::length).reversed());
      banded.add(new MillBundle("", "", 0, wide, part));
    }
    return banded;
  }

  /**
   * Loads the first half of the timber on one truck and the rest on the next, in mill order; what
   * was loaded last lies on top and comes off first.
   */
  private static List<MillBundle> onTrucks(List<MillBundle> banded) {
    int all = banded.stream().mapToInt(Bundling::timberLength).sum();
    List<MillBundle> first = new ArrayList<>();
    List<MillBundle> second = new ArrayList<>();
    int loaded = 0;
    for (MillBundle bundle : banded) {
      (loaded + timberLength(bundle) / 2 < all / 2 ? first : second).add(bundle);
      loaded += timberLength(bundle);
    }
    List<MillBundle> off = new ArrayList<>();
    off.addAll(comingOff("L1", first, 0));
    off.addAll(comingOff("L2", second, first.size()));
    return off;
  }

  private static List<MillBundle> comingOff(String load, List<MillBundle> loaded, int before) {
    List<MillBundle> off = new ArrayList<>();
    for (int i = 0; i < loaded.size(); i++) {
      String id = "B" + (before + i + 1 < 10 ? "0" : "") + (before + i + 1);
      off.add(loaded.get(i).onTruck(id, load, loaded.size() - i));
    }
    Collections.reverse(off);
    return off;
  }

  private static int timberLength(MillBundle bundle) {
    return bundle.timbers().stream().mapToInt(Timber::length).sum();
  }
}
