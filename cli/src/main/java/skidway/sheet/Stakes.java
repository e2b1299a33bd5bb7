package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import skidway.plan.Task;
import skidway.site.Deck;
import skidway.site.KeepClear;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.units.UnitSystem;

/**
 * Adds stakes to the references where a building alone would be seen at too flat an angle: each in
 * line with two corners, a round distance beyond the second, so that a string finds it.
 */
final class Stakes {
  private static final double STEP_M = 5;
  private static final double STEP_US_M = 6.096;
  private static final int MOST_STEPS = 8;

  private final Task task;
  private final TapeSight sight;
  private final List<Reference> references;

  private Stakes(Task task, List<Reference> corners, TapeSight sight) {
    this.task = task;
    this.sight = sight;
    this.references = new ArrayList<>(corners);
  }

  /** The references and as many stakes as help, the most helpful first. */
  static List<Reference> added(
      Task task, List<Reference> corners, List<Point> wanted, TapeSight sight) {
    Stakes stakes = new Stakes(task, corners, sight);
    List<Reference> candidates = stakes.candidates();
    List<Point> open = stakes.open(wanted);
    while (!open.isEmpty()) {
      List<Point> still = open;
      Optional<Reference> best =
          candidates.stream().max(Comparator.comparingLong(s -> stakes.helps(s, still)));
      if (best.isEmpty() || stakes.helps(best.get(), still) == 0) {
        break;
      }
      stakes.add(best.get());
      open = stakes.open(still);
    }
    return List.copyOf(stakes.references);
  }

  private void add(Reference stake) {
    String name = Reference.letters(references.size());
    references.add(new Reference(name, stake.at(), stake.where(), true));
  }

  private List<Point> open(List<Point> wanted) {
    return wanted.stream().filter(p -> !TapeFix.any(p, references, sight)).toList();
  }

  /** Of points for which no two references serve, how many have one that serves with the stake. */
  private long helps(Reference stake, List<Point> open) {
    return open.stream()
        .filter(p -> references.stream().anyMatch(r -> TapeFix.serve(p, r, stake, sight)))
        .count();
  }

  /** The farthest first: of those that help as much, the last and nearest is taken. */
  private List<Reference> candidates() {
    List<Reference> all = new ArrayList<>();
    boolean metric = task.figures().units() == UnitSystem.METRIC;
    for (int steps = MOST_STEPS; steps > 0; steps--) {
      double beyondM = steps * (metric ? STEP_M : STEP_US_M);
      for (int i = 0; i < references.size(); i++) {
        Reference a = references.get(i);
        Reference b = references.get((i + 1) % references.size());
        beyond(a, b, beyondM).ifPresent(all::add);
        beyond(b, a, beyondM).ifPresent(all::add);
      }
    }
    return all;
  }

  private Optional<Reference> beyond(Reference from, Reference through, double beyondM) {
    Point way = through.at().minus(from.at());
    if (way.length() < 1) {
      return Optional.empty();
    }
    Point at = through.at().plus(way.times(beyondM / way.length()));
    String far = task.figures().length(beyondM) + " beyond " + through.name();
    String where = "stake in line with " + from.name() + " and " + through.name() + ", " + far;
    return free(at) ? Optional.of(new Reference("", at, where, true)) : Optional.empty();
  }

  /** On the site, beside its decks, and nowhere that is kept clear. */
  private boolean free(Point at) {
    return contains(task.site().boundary(), at)
        && task.site().decks().stream().map(Deck::outline).noneMatch(o -> contains(o, at))
        && task.site().keepClears().stream()
            .map(KeepClear::outline)
            .noneMatch(o -> contains(o, at));
  }

  private static boolean contains(Outline outline, Point point) {
    List<PagePoint> corners = outline.corners().stream().map(Stakes::flat).toList();
    return Inside.contains(corners, flat(point));
  }

  private static PagePoint flat(Point point) {
    return new PagePoint(point.x(), point.y());
  }
}
