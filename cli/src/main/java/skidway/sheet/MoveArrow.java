package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.site.Footprint;
import skidway.site.Point;
import skidway.site.Spot;

/**
 * An arrow on the map from where something lies to where it is lifted, with the numbers of the
 * lifts. It tells by its shape: a full line for a move, a dashed one to a place where a bundle
 * waits; a white edge keeps it apart from what it crosses.
 *
 * @param numbers of the steps that lift from and to these two places
 */
record MoveArrow(Footprint from, Footprint to, boolean aside, List<Integer> numbers) {
  private static final double HEAD_MM = 4;
  private static final double HALF_HEAD_MM = 1.7;

  /** Two arrows that go to and fro keep to the right of each other. */
  private static final double RIGHT_MM = 1.6;

  private static final Type NUMBERS = Type.bold(3.4).centred();

  MoveArrow {
    numbers = List.copyOf(numbers);
  }

  /** One for each pair of places between which something that lies already is lifted. */
  static List<MoveArrow> of(Task task, Plan plan) {
    List<MoveArrow> arrows = new ArrayList<>();
    for (Step step : lifts(task, plan)) {
      Optional<Spot> from = spot(task, plan, step.fromId());
      Optional<Spot> to = spot(task, plan, step.toId());
      if (from.isPresent() && to.isPresent()) {
        add(
            arrows,
            from.get().footprint(),
            to.get().footprint(),
            step.kind() == StepKind.SET_ASIDE,
            step.number());
      }
    }
    return arrows;
  }

  /** The steps that lift what lies already, in order. */
  static List<Step> lifts(Task task, Plan plan) {
    return plan.steps().stream()
        .filter(step -> !step.kind().offTruck() && task.start().lies(step.bundleId()))
        .toList();
  }

  private static void add(
      List<MoveArrow> arrows, Footprint from, Footprint to, boolean aside, int number) {
    for (int i = 0; i < arrows.size(); i++) {
      MoveArrow arrow = arrows.get(i);
      if (arrow.from().equals(from) && arrow.to().equals(to) && arrow.aside() == aside) {
        List<Integer> more = new ArrayList<>(arrow.numbers());
        more.add(number);
        arrows.set(i, new MoveArrow(from, to, aside, more));
        return;
      }
    }
    arrows.add(new MoveArrow(from, to, aside, List.of(number)));
  }

  private static Optional<Spot> spot(Task task, Plan plan, String id) {
    Stream<Spot> lay = task.start().stacks().stream().map(Stack::spot);
    return Stream.concat(plan.spots().stream(), lay).filter(s -> s.id().equals(id)).findFirst();
  }

  void draw(Drawing drawing, Frame frame) {
    PagePoint start = frame.at(edge(from, to.centre()));
    PagePoint end = frame.at(edge(to, from.centre()));
    double length = start.distanceTo(end);
    if (length < 1e-6) {
      return;
    }
    double rightX = -(end.y() - start.y()) / length;
    double rightY = (end.x() - start.x()) / length;
    start = new PagePoint(start.x() + RIGHT_MM * rightX, start.y() + RIGHT_MM * rightY);
    end = new PagePoint(end.x() + RIGHT_MM * rightX, end.y() + RIGHT_MM * rightY);
    PagePoint neck = end.towards(start, Math.min(1, HEAD_MM / length));
    drawing.open("move");
    drawing.line(start, end, "stroke", Palette.PAPER, "stroke-width", "2.6");
    drawing.line(
        start,
        neck,
        "stroke",
        Palette.INK,
        "stroke-width",
        "1",
        "stroke-dasharray",
        aside ? "2.4 1.4" : "none");
    drawing.polygon(
        List.of(
            end,
            new PagePoint(neck.x() + HALF_HEAD_MM * rightX, neck.y() + HALF_HEAD_MM * rightY),
            new PagePoint(neck.x() - HALF_HEAD_MM * rightX, neck.y() - HALF_HEAD_MM * rightY)),
        "fill",
        Palette.INK,
        "stroke",
        Palette.PAPER,
        "stroke-width",
        "0.4");
    numbers(drawing, start.towards(end, 0.45));
    drawing.close();
  }

  private void numbers(Drawing drawing, PagePoint at) {
    String words = numbers.stream().map(n -> "" + n).collect(Collectors.joining(", "));
    double half = Math.max(2.6, NUMBERS.widthMm(words) / 2 + 1.2);
    drawing.rect(
        new Box(at.x() - half, at.y() - 2.6, at.x() + half, at.y() + 2.6),
        "rx",
        "2.6",
        "fill",
        Palette.PAPER,
        "stroke",
        Palette.INK,
        "stroke-width",
        "0.5");
    drawing.text(words, at, NUMBERS);
  }

  /** Where the line from a place's middle towards a point leaves the place. */
  private static Point edge(Footprint place, Point towards) {
    Point way = towards.minus(place.centre());
    double along = Math.abs(way.dot(place.along())) / (place.lengthM() / 2);
    double across = Math.abs(way.dot(place.along().turnedLeft())) / (place.widthM() / 2);
    double times = Math.max(along, across);
    return times <= 1 ? towards : place.centre().plus(way.times(1 / times));
  }

  /** The outline of a place from which everything has gone. */
  static void drawLeft(Drawing drawing, Footprint place, Frame frame) {
    drawing.polygon(
        frame.at(place.outline()), "fill", "none", "stroke", Palette.PAPER, "stroke-width", "1.4");
    drawing.polygon(
        frame.at(place.outline()),
        "fill",
        "none",
        "stroke",
        Palette.INK,
        "stroke-width",
        "0.6",
        "stroke-dasharray",
        "0.8 1.2");
  }
}
