package skidway.paper;

import org.w3c.dom.Element;

/**
 * How large a drawing is on the page and which part of its own coordinates that shows.
 *
 * @param wide in the page's dots
 * @param high in the page's dots
 */
record SvgSize(double wide, double high, double x0, double y0, double across, double down) {
  /** Where a drawing's viewBox is kept. */
  static final String VIEW = "data-view-box";

  private static final double PIXELS_PER_MM = 96 / 25.4;

  /**
   * The style sheet's size goes before the drawing's own; one of both follows from the other.
   *
   * @param wide from the style sheet, in dots; negative where it says nothing
   */
  static SvgSize of(Element svg, double wide, double high, double dotsPerPixel) {
    String[] view = svg.getAttribute(VIEW).trim().split("\\s+", -1);
    if (view.length != 4) {
      throw new IllegalArgumentException("A drawing needs a viewBox of four numbers.");
    }
    double across = Double.parseDouble(view[2]);
    double down = Double.parseDouble(view[3]);
    double w = wide > 0 ? wide : dots(svg.getAttribute("width"), dotsPerPixel);
    double h = high > 0 ? high : dots(svg.getAttribute("height"), dotsPerPixel);
    if (wide > 0 && !(high > 0)) {
      h = w * down / across;
    } else if (high > 0 && !(wide > 0)) {
      w = h * across / down;
    }
    if (!(w > 0) || !(h > 0)) {
      throw new IllegalArgumentException(
          "A drawing needs a size, on itself or in the style sheet.");
    }
    return new SvgSize(
        w, h, Double.parseDouble(view[0]), Double.parseDouble(view[1]), across, down);
  }

  private static double dots(String length, double dotsPerPixel) {
    if (length.endsWith("mm")) {
      double mm = Double.parseDouble(length.substring(0, length.length() - 2));
      return mm * PIXELS_PER_MM * dotsPerPixel;
    }
    return 0;
  }

  /** Dots for each unit of the drawing; the whole of it is shown. */
  double scale() {
    return Math.min(wide / across, high / down);
  }
}
