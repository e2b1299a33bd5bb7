package skidway.sheet;

import java.util.Optional;
import java.util.stream.DoubleStream;
import skidway.site.Footprint;
import skidway.site.Spot;

/**
 * The sign with a spot's code, black with white letters as on the unloading sheet; white with a
 * dashed rim where bundles only wait.
 *
 * @param angleDeg clockwise
 */
record Plate(String code, PagePoint centre, double sizeMm, double angleDeg, boolean waiting) {
  private static final double[] SIZES = {8.4, 7.2, 6.2, 5.4, 4.8, 4.2, 3.7};
  private static final double PADDING = 0.9;
  private static final double HEIGHT = 1.16;

  /** How far a plate may stand out over a narrow stack. */
  private static final double STAND_OUT = 1.35;

  /** A larger plate leaves this share of the stack's length to be seen; the smallest may not. */
  private static final double LEAVES = 0.25;

  /** The largest plate that lies on the spot, level if it can. */
  static Optional<Plate> on(Spot spot, Frame frame, boolean waiting) {
    Footprint area = spot.footprint();
    double length = frame.mm(area.lengthM()) - 0.6;
    double width = frame.mm(area.widthM()) * STAND_OUT;
    return DoubleStream.of(SIZES)
        .boxed()
        .flatMap(size -> turned(spot, size, length * (1 - LEAVES), width).stream())
        .findFirst()
        .or(() -> turned(spot, SIZES[SIZES.length - 1], length, width))
        .map(p -> new Plate(spot.id(), frame.at(area.centre()), p.size(), p.angle(), waiting));
  }

  private record Fit(double size, double angle) {}

  private static Optional<Fit> turned(Spot spot, double size, double length, double width) {
    double headingDeg = spot.footprint().headingDeg();
    boolean upright = Math.abs(((headingDeg % 180) + 180) % 180 - 90) < 1e-6;
    double along = width(spot.id(), size);
    double across = size * HEIGHT;
    if (upright && along <= width && across <= length) {
      return Optional.of(new Fit(size, 0));
    }
    return along <= length && across <= width
        ? Optional.of(new Fit(size, Alongside.angleDeg(headingDeg)))
        : Optional.empty();
  }

  static double width(String code, double sizeMm) {
    return Lettering.widthMm(code, sizeMm, true) + 2 * PADDING;
  }

  /** The upright box that holds the plate. */
  Box box() {
    double along = width(code, sizeMm);
    double across = sizeMm * HEIGHT;
    double cos = Math.abs(Math.cos(Math.toRadians(angleDeg)));
    double sin = Math.abs(Math.sin(Math.toRadians(angleDeg)));
    return Box.around(centre, along * cos + across * sin, along * sin + across * cos);
  }

  void draw(Drawing drawing) {
    drawing.open("plate", "transform", Alongside.turn(angleDeg, centre));
    Box plain = Box.around(centre, width(code, sizeMm), sizeMm * HEIGHT);
    if (waiting) {
      drawing.rect(
          plain,
          "rx",
          "0.8",
          "fill",
          Palette.PAPER,
          "stroke",
          Palette.INK,
          "stroke-width",
          "0.4",
          "stroke-dasharray",
          "1.2 0.8");
    } else {
      drawing.rect(plain, "rx", "0.8", "fill", Palette.INK);
    }
    Type type = Type.bold(sizeMm).centred().in(waiting ? Palette.INK : Palette.PAPER);
    drawing.text(code, centre, type);
    drawing.close();
  }
}
