package skidway.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Proposes how marks are taken apart: tries the shapes that marks usually have and takes the one
 * that most marks fit, with one piece a place. Marks that fit a shape with known walls, and courses
 * from 1 on, count more.
 */
final class MarkShapes {
  /** A shape that fewer marks fit is no shape (assumption). */
  private static final double LEAST_SHARE = 0.8;

  private static final List<String> BETWEEN = List.of("-", ".", "/", "_", " ");
  private static final List<String> COURSE_SIGNS = List.of("", "C", "R", "L");
  private static final int MARKS_LOOKED_AT = 2000;

  private static final List<MarkPattern> SHAPES =
      shapes().stream().map(shape -> MarkPattern.of(shape, "")).toList();

  private MarkShapes() {}

  /**
   * What was found.
   *
   * @param others shapes that fit as well and read the marks otherwise
   */
  record Proposal(MarkPattern pattern, List<String> others) {}

  private record Tried(MarkPattern pattern, double score, double fits, Set<String> places) {}

  /** The best shape, or empty if none fits. */
  static Optional<Proposal> of(List<String> marks, Set<String> walls) {
    List<String> some = marks.stream().limit(MARKS_LOOKED_AT).toList();
    List<Tried> tried = new ArrayList<>();
    for (MarkPattern shape : SHAPES) {
      Tried t = attempt(shape, some, walls);
      if (t.fits() >= LEAST_SHARE) {
        tried.add(t);
      }
    }
    Tried best = null;
    for (Tried t : tried) {
      if (best == null || t.score() > best.score() + 1e-9) {
        best = t;
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    List<String> others = new ArrayList<>();
    Set<Set<String>> readings = new HashSet<>(Set.of(best.places()));
    for (Tried t : tried) {
      if (Math.abs(t.score() - best.score()) <= 1e-9 && readings.add(t.places())) {
        others.add(t.pattern().text());
      }
    }
    return Optional.of(new Proposal(best.pattern(), List.copyOf(others)));
  }

  private static List<String> shapes() {
    List<String> shapes = new ArrayList<>();
    for (String a : BETWEEN) {
      for (String sign : COURSE_SIGNS) {
        for (String b : BETWEEN) {
          shapes.add("{wall}" + a + sign + "{course}" + b + "{position}");
        }
      }
    }
    for (String a : BETWEEN) {
      shapes.add("{wall}" + a + "{course:2}{position:2}");
      shapes.add("{wall}" + a + "{course:1}{position:2}");
      shapes.add("{wall}" + a + "{course:2}{position:1}");
      shapes.add("{wall}{course:2}" + a + "{position}");
    }
    for (String w : List.of("{wall}", "{wall:1}", "{wall:2}")) {
      shapes.add(w + "{course:2}{position:2}");
      shapes.add(w + "{course:2}{position:1}");
      shapes.add(w + "{course:1}{position:1}");
      for (String a : BETWEEN) {
        shapes.add(w + "{course}" + a + "{position}");
      }
    }
    for (String a : BETWEEN) {
      for (String sign : COURSE_SIGNS) {
        shapes.add("{wall}" + a + sign + "{course}");
      }
    }
    return shapes;
  }

  private static Tried attempt(MarkPattern pattern, List<String> marks, Set<String> walls) {
    Set<String> places = new HashSet<>();
    Set<String> courses = new HashSet<>();
    int fits = 0;
    int known = 0;
    int read = 0;
    for (String mark : marks) {
      if (read++ - fits > (1 - LEAST_SHARE) * marks.size() + 1) {
        break; // too few fit already; most shapes end here
      }
      Optional<MarkPattern.Parts> parts = pattern.apart(mark);
      if (parts.isPresent()) {
        fits++;
        var values = parts.get().values();
        String wall = values.getOrDefault(Meaning.WALL, "");
        known += walls.contains(wall) ? 1 : 0;
        String course = values.getOrDefault(Meaning.COURSE, "");
        courses.add(course);
        if (!course.equals("0") && !"0".equals(values.get(Meaning.POSITION))) {
          places.add(wall + "\n" + course + "\n" + values.get(Meaning.POSITION));
        }
      }
    }
    int all = Math.max(1, marks.size());
    double walled = walls.isEmpty() ? 0 : (double) known / all;
    double lowest = courses.contains("1") ? 0.1 : 0;
    double score = (double) fits / all + (double) places.size() / all + walled + lowest;
    return new Tried(pattern, score, (double) fits / all, places);
  }
}
