package skidway.sheet;

import java.util.List;
import java.util.Locale;
import skidway.plan.Task;
import skidway.site.Footprint;
import skidway.site.Machine;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.TruckStand;

/** Draws where trucks stand and where the machine sets up. */
final class Stands {
  private static final double CAB_M = 2.2;

  private static final Type NAME = Type.bold(3.4).centred();

  /** Half of a machine stand's diamond, mm. */
  static final double DIAMOND = 2.3;

  private Stands() {}

  static void draw(Drawing drawing, Task task, Frame frame) {
    drawing.open("stands");
    task.site().truckStands().forEach(stand -> truck(drawing, task, stand, frame));
    for (MachineStand stand : task.site().machine().stands()) {
      PagePoint at = frame.at(stand.at());
      if (frame.area().nearest(at).equals(at)) {
        diamond(drawing, at);
      }
    }
    drawing.close();
  }

  static void diamond(Drawing drawing, PagePoint at) {
    double r = DIAMOND;
    drawing.polygon(
        List.of(
            new PagePoint(at.x() - r, at.y()),
            new PagePoint(at.x(), at.y() - r),
            new PagePoint(at.x() + r, at.y()),
            new PagePoint(at.x(), at.y() + r)),
        "fill",
        Palette.PAPER,
        "stroke",
        Palette.INK,
        "stroke-width",
        "0.6");
    drawing.circle(at, 0.75, "fill", Palette.INK);
  }

  private static void truck(Drawing drawing, Task task, TruckStand stand, Frame frame) {
    Footprint area = stand.area();
    drawing.open("truck");
    drawing.polygon(
        frame.at(area.outline()),
        "fill",
        Palette.PAPER,
        "stroke",
        Palette.INK,
        "stroke-width",
        "0.5");
    double cabM = cabM(area);
    Point front = area.centre().plus(area.along().times(area.lengthM() / 2 - cabM / 2));
    Footprint cab = new Footprint(front, area.headingDeg(), cabM, area.widthM() * 0.86);
    drawing.polygon(
        frame.at(cab.outline()),
        "fill",
        Palette.SOFT_INK,
        "stroke",
        Palette.INK,
        "stroke-width",
        "0.3");
    String name = name(task, stand);
    drawing.hint(name);
    if (holds(name, stand, task.site().machine(), frame)) {
      Footprint bed = bed(stand);
      PagePoint at = frame.at(bed.centre());
      double angle = Alongside.angleDeg(bed.headingDeg());
      drawing.text(name, at, NAME, "transform", Alongside.turn(angle, at));
    }
    drawing.close();
  }

  /** Whether the truck's bed on paper has room for its name, a crane on the truck considered. */
  static boolean holds(String name, TruckStand stand, Machine machine, Frame frame) {
    Footprint bed = bed(stand);
    Box taken = Box.of(frame.at(bed.outline())).grown(DIAMOND);
    boolean crane =
        machine.stands().stream()
            .anyMatch(s -> taken.nearest(frame.at(s.at())).equals(frame.at(s.at())));
    return !crane
        && NAME.widthMm(name) + 1.6 <= frame.mm(bed.lengthM())
        && NAME.sizeMm() * Lettering.LINE <= frame.mm(bed.widthM());
  }

  private static Footprint bed(TruckStand stand) {
    Footprint area = stand.area();
    double cabM = cabM(area);
    return new Footprint(
        area.centre().minus(area.along().times(cabM / 2)),
        area.headingDeg(),
        area.lengthM() - cabM,
        area.widthM());
  }

  private static double cabM(Footprint area) {
    return Math.min(CAB_M, area.lengthM() / 3);
  }

  static String name(Task task, TruckStand stand) {
    List<String> loads =
        task.delivery().loads().stream()
            .filter(load -> load.truckStandId().equals(stand.id()))
            .map(LoadNames::of)
            .toList();
    String who = loads.isEmpty() ? "" : ": " + String.join(", ", loads);
    boolean said = stand.id().toLowerCase(Locale.ROOT).startsWith("truck");
    return (said ? "" : "truck ") + stand.id() + who;
  }
}
